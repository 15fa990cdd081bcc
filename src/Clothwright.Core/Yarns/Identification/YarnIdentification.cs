using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>Finds what a yarn that lost its label can be.</summary>
/// <remarks>
/// Bayes' rule over the trade counts: how common each is, times how well measured mass per length, wraps, strands and hints
/// fit it. Whatever is not listed is allowed for with a flat share, so a poor fit shows as such.
/// </remarks>
public static class YarnIdentification
{
    // Straightened by hand on a ruler, a length is good to half a percent (from memory of skein practice, ASTM D1907).
    private const double LengthDeviation = 0.005;

    // Share of yarns that are in no list, and the range of thickness they spread over evenly by ratio (2 to 4000 tex).
    private const double UnlistedPrior = 0.15;
    private const double FinestTex = 2;
    private const double ThickestTex = 4000;

    // Hand wraps are about 0.7 of the diameters that geometrically fit, and hands differ by a sixth.
    private const double HandWraps = 0.7;
    private const double WrapsDeviation = 0.15;
    private const double UnlistedWrapsDeviation = 0.3;
    private const double UnlistedBulkDensity = 0.8;

    // How often a hint speaks for a fibre that does not show it; a burn test misleads less often than a feel.
    private const double BurnMisleads = 0.03;
    private const double FeelMisleads = 0.15;
    private const double PliesMiscounted = 0.03;

    private const double LeastShown = 0.01;
    private const int MostShown = 12;

    private static readonly Rule SizeRule = new("measured length and mass", "tex = 1000 × grams / metres", Source.Definition);

    /// <summary>Ranks the readings of a yarn.</summary>
    /// <param name="clues">What was measured and seen.</param>
    /// <returns>The readings, or a problem with a clue.</returns>
    public static Parsed<IdentifiedYarn> Identify(YarnClues clues)
    {
        if (clues.Length == Length.Zero) return new InputProblem("A length of 0 cannot be weighed.", "length", "Measure some metres of the yarn, for example 10 m.");
        if (clues.Mass == Mass.Zero) return new InputProblem("A mass of 0 g is no yarn.", "mass", "Weigh more of the yarn, for example 10 m on a scale that shows 0.01 g.");
        if (clues.Plies is < 1 or > 99) return new InputProblem($"{clues.Plies} strands cannot be.", "plies", "Untwist the yarn and count its strands, for example 2.");

        Derived<LinearDensity> size = Measure(clues);
        double relative = size.StandardDeviation / size.Value.Tex;
        int usual = TradeCounts.All.Sum(t => t.Usual);
        List<(TradeCount Trade, Fibre Fibre, double Weight)> candidates =
        [
            .. TradeCounts.All.SelectMany(t => t.Fibres.Select((f, rank) =>
                (t, f, (1 - UnlistedPrior) * t.Usual / usual * ShareOfRank(rank, t.Fibres.Length) * FitOfSize(t.Count, size.Value, relative) * FitOfWraps(clues, t.Count.Tex, f.BulkDensity.Value.GramsPerCubicCentimetre, WrapsDeviation) * FitOfSigns(clues, t.Count.Plies, f)))),
        ];
        double unlisted = UnlistedPrior / Math.Log(ThickestTex / FinestTex) * FitOfWraps(clues, size.Value.Tex, UnlistedBulkDensity, UnlistedWrapsDeviation) * UnlistedSigns(clues);
        double all = candidates.Sum(c => c.Weight) + unlisted;
        ImmutableArray<YarnReading> readings =
        [
            .. candidates
                .Where(c => c.Weight / all >= LeastShown)
                .OrderByDescending(c => c.Weight)
                .ThenBy(c => c.Trade.Count.ToString(), StringComparer.Ordinal)
                .ThenBy(c => c.Fibre.Id, StringComparer.Ordinal)
                .Take(MostShown)
                .Select(c => Reading(c.Trade.Count, c.Fibre, c.Weight / all, size.Value)),
        ];
        return new IdentifiedYarn(
            size,
            readings,
            Ratio.FromValue(unlisted / all),
            clues.Wraps is { } wraps ? KnittingClasses.FromWraps(wraps) : KnittingClasses.FromGrist(size.Value),
            NextTests(clues, readings));
    }

    private static Derived<LinearDensity> Measure(YarnClues clues)
    {
        double step = (clues.ScaleStep ?? SuggestedStep(clues.Mass)).Kilograms;
        return Derived.From<LinearDensity>(
            "mass per length as measured",
            SizeRule,
            Derived.Given("mass", clues.Mass, Source.Measured, step / Math.Sqrt(12)),
            Derived.Given("length", clues.Length, Source.Measured, clues.Length.Metres * LengthDeviation),
            (kilograms, metres) => kilograms * 1e6 / metres);
    }

    // 1.48 g came from a scale that shows hundredths; whole grams from one that shows grams.
    private static Mass SuggestedStep(Mass mass)
    {
        double step = 1;
        while (step > 0.001 && Math.Abs(mass.Grams / step - Math.Round(mass.Grams / step)) > 1e-6) step /= 10;
        return Mass.FromGrams(step);
    }

    // The fibres of a trade count stand most usual first: shares fall as 1, 1/2, 1/3 and so on.
    private static double ShareOfRank(int rank, int fibres) => 1.0 / (rank + 1) / Enumerable.Range(1, fibres).Sum(n => 1.0 / n);

    private static double FitOfSize(YarnCount count, LinearDensity measured, double relative)
    {
        Derived<LinearDensity> sold = count.ToLinearDensity();
        double tolerance = sold.StandardDeviation / sold.Value.Tex;
        return Normal(Math.Log(measured.Tex / sold.Value.Tex), Math.Sqrt(relative * relative + tolerance * tolerance));
    }

    private static double FitOfWraps(YarnClues clues, double tex, double bulkDensity, double deviation)
    {
        if (clues.Wraps is not { } wraps) return 1;
        double diameterMillimetres = Math.Sqrt(4 * tex / (1000 * Math.PI * bulkDensity));
        double expectedPerInch = HandWraps * Length.MetresPerInch * 1000 / diameterMillimetres;
        return Normal(Math.Log(wraps.PerInch / expectedPerInch), deviation);
    }

    private static double FitOfSigns(YarnClues clues, int plies, Fibre fibre)
    {
        double fit = 1;
        if (clues.Plies is { } seen) fit *= seen == plies ? 1 - PliesMiscounted : PliesMiscounted;
        if (clues.Burns is { } burns) fit *= BurnsSo(burns, fibre.Family) ? 1 - BurnMisleads : BurnMisleads;
        if (clues.Feels is { } feels) fit *= FeelsSo(feels, fibre.Family) ? 1 - FeelMisleads : FeelMisleads;
        return fit;
    }

    // Of an unlisted yarn nothing is known, so each sign fits it as often as not.
    private static double UnlistedSigns(YarnClues clues) =>
        (clues.Plies is null ? 1 : 0.5) * (clues.Burns is null ? 1 : 0.5) * (clues.Feels is null ? 1 : 0.5);

    private static bool BurnsSo(BurnHint hint, FibreFamily family) => hint switch
    {
        BurnHint.BurntHair => family is FibreFamily.Wool or FibreFamily.Silk,
        BurnHint.BurntPaper => family is FibreFamily.Cotton or FibreFamily.Bast or FibreFamily.Regenerated,
        BurnHint.HardBead => family is FibreFamily.Synthetic or FibreFamily.Film,
        _ => family is FibreFamily.Acetate,
    };

    private static bool FeelsSo(FeelHint hint, FibreFamily family) => hint switch
    {
        FeelHint.Springy => family is FibreFamily.Wool,
        FeelHint.Silky => family is FibreFamily.Silk,
        FeelHint.SoftDull => family is FibreFamily.Cotton,
        FeelHint.Crisp => family is FibreFamily.Bast,
        FeelHint.Drapy => family is FibreFamily.Regenerated or FibreFamily.Acetate,
        FeelHint.Plastic => family is FibreFamily.Synthetic,
        _ => family is FibreFamily.Film,
    };

    private static YarnReading Reading(YarnCount count, Fibre fibre, double chance, LinearDensity measured)
    {
        double deviation = measured.Tex / count.Tex - 1;
        CountSystemDefinition system = count.System.Definition();
        string name = system.PlyOrder is PlyOrder.None or PlyOrder.Stated ? count.Label : $"{count.Label} in {system.Name} count";
        string sentence = string.Create(
            CultureInfo.InvariantCulture,
            $"{name}, of {fibre.Name}: {count.Tex:0.#} tex, measured {Math.Abs(deviation) * 100:0.#} % {(deviation < 0 ? "finer" : "thicker")}; chance {chance * 100:0} %.");
        return new YarnReading(count, fibre, Ratio.FromValue(chance), Ratio.FromValue(deviation), sentence);
    }

    private static ImmutableArray<string> NextTests(YarnClues clues, ImmutableArray<YarnReading> readings)
    {
        var tests = ImmutableArray.CreateBuilder<string>();
        if (clues.Plies is null && readings.Select(r => r.Count.Plies).Distinct().Count() > 1) tests.Add("Untwist an end and count its strands.");
        bool families = readings.Select(r => r.Fibre.Family).Distinct().Count() > 1;
        if (clues.Feels is null && families) tests.Add("Feel it: springy, silky, soft and dull, crisp, drapy, or like plastic?");
        if (clues.Burns is null && families)
        {
            tests.Add("Burn a short end. Caution: hold it in metal tweezers over water, away from yarn, hair and sleeves, in moving air; molten beads burn skin. Follow the fire rules of the place.");
        }

        if (clues.Wraps is null) tests.Add("Wrap it around a ruler, touching but not pressed, over an inch or 2 cm, and count.");
        return tests.ToImmutable();
    }

    // Density of a normal distribution about 0.
    private static double Normal(double x, double deviation) => Math.Exp(-x * x / (2 * deviation * deviation)) / (deviation * Math.Sqrt(2 * Math.PI));
}
