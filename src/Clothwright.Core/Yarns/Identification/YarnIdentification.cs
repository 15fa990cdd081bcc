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
                (t, f, (1 - UnlistedPrior) * t.Usual / usual * ShareOfRank(rank, t.Fibres.Length) * YarnFit.OfSize(t.Count, size.Value, relative) * YarnFit.OfWraps(clues, t.Count.Tex, f.BulkDensity.Value) * YarnFit.OfSigns(clues, t.Count.Plies, f)))),
        ];
        double unlisted = UnlistedPrior / Math.Log(ThickestTex / FinestTex) * YarnFit.OfUnlistedWraps(clues, size.Value.Tex) * YarnFit.OfUnlistedSigns(clues);
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

    private static YarnReading Reading(YarnCount count, Fibre fibre, double chance, LinearDensity measured)
    {
        double deviation = measured.Tex / count.Tex - 1;
        CountSystemDefinition system = count.System.Definition();
        string counted = system.PlyOrder is PlyOrder.None or PlyOrder.Stated ? count.Label : $"{count.Label} by the {system.Name} count";
        string sentence = string.Create(
            CultureInfo.InvariantCulture,
            $"{char.ToUpperInvariant(fibre.Name[0])}{fibre.Name[1..]}, {counted}: {count.Tex:0.#} tex; this yarn is {Math.Abs(deviation) * 100:0.#} % {(deviation < 0 ? "finer" : "thicker")}.");
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
}
