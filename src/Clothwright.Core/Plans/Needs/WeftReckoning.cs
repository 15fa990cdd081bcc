using System.Collections.Immutable;
using Clothwright.Core.Plans.Pieces;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Plans.Wefts;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Needs;

/// <summary>How much weft a stretch of cloth takes, yarn by yarn.</summary>
internal static class WeftReckoning
{
    // A weft is carried up the selvedge over about an inch; beyond that it is cut and two tails are laid in.
    private static readonly Length LongestCarried = Length.FromInches(1);

    private static readonly Rule InClothRule = new(
        "weft in the cloth", "length = times across in a metre × length off the loom × width off the loom ÷ (1 − weft take-up) × evenness of the beat", Source.Derivation);

    private static readonly Rule WasteRule = new(
        "weft in joins and tails", "length = weft in the cloth × waste + tails × length of a tail", Source.CommonPractice);

    private static readonly Derived<Ratio> Beat = Derived.Given(
        "picks beaten over picks planned", Ratio.FromValue(1), Source.CommonPractice, 0.04, "evenness of the beat", "1: as planned; a hand's beat strays by a few percent");

    private static readonly Derived<Ratio> CustomaryWaste = Derived.FromRange(
        "weft lost in joins and on the shuttle", Ratio.FromPercent(2), Ratio.FromPercent(6), Source.CommonPractice);

    private static readonly Derived<Length> Tail = Derived.FromRange(
        "tail laid in at a change of weft", Length.FromCentimetres(6), Length.FromCentimetres(12), Source.CommonPractice);

    /// <summary>Weft for a number of picks.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="groundPicks">Ground picks thrown, every layer.</param>
    /// <param name="patternPicks">Pattern picks thrown, every layer.</param>
    /// <param name="length">Length off the loom on which they lie; above 0.</param>
    /// <param name="layerWidth">Width of one layer off the loom.</param>
    /// <param name="waste">Share of the weft lost, as the weaver knows it; null for what is customary.</param>
    public static ImmutableArray<WeftNeed> For(PieceCloth cloth, int groundPicks, int patternPicks, Derived<Length> length, Derived<Length> layerWidth, Ratio? waste)
    {
        Derived<Ratio> lost = waste is { } known ? Derived.Given("weft lost in joins and on the shuttle", known, Source.Measured) : CustomaryWaste;
        var uses = new Dictionary<string, (int Picks, double Crossings, int Cuts)>(StringComparer.Ordinal);
        Add(uses, cloth.Ground, groundPicks, cloth.GroundPicks.Value * LongestCarried);
        if (cloth.Pattern is { } pattern) Add(uses, pattern, patternPicks, cloth.GroundPicks.Value * LongestCarried);
        return [.. uses.Where(u => u.Value.Picks > 0).Select(u => Need(cloth, u.Key, u.Value.Picks, u.Value.Crossings, u.Value.Cuts, length, layerWidth, lost))];
    }

    private static WeftNeed Need(
        PieceCloth cloth, string yarnId, int picks, double crossings, int cuts, Derived<Length> length, Derived<Length> layerWidth, Derived<Ratio> lost)
    {
        Derived<Length> inCloth = Derived.From<Length>(
            $"{yarnId}, weft in the cloth",
            InClothRule,
            [Derived.Decision("times across in a metre", Number.FromValue(crossings / length.Value.Metres)), length, layerWidth, cloth.WeftTakeUp, Beat],
            v => v[0] * v[1] * v[2] / (1 - v[3]) * v[4]);
        Derived<Length> waste = Derived.From<Length>(
            $"{yarnId}, weft in joins and tails",
            WasteRule,
            [inCloth, lost, Derived.Decision("tails", Whole.FromCount(2 * cuts)), Tail],
            v => v[0] * v[1] + v[2] * v[3]);
        return new WeftNeed(yarnId, Derived.Decision("picks", Whole.FromCount(picks)), inCloth, waste);
    }

    private static void Add(Dictionary<string, (int Picks, double Crossings, int Cuts)> uses, WeftSystem system, int picks, double longestCarried)
    {
        foreach ((string yarn, int thrown, double crossings) in system.Count(picks))
        {
            (int p, double c, int cuts) = uses.GetValueOrDefault(yarn);
            uses[yarn] = (p + thrown, c + crossings, cuts);
        }

        foreach ((string yarn, int cut) in system.Cuts(picks, longestCarried))
        {
            (int p, double c, int cuts) = uses.GetValueOrDefault(yarn);
            uses[yarn] = (p, c, cuts + cut);
        }
    }
}
