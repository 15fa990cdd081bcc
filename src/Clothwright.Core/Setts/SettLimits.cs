using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Limits;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts;

/// <summary>The limits of a cloth by each method, side by side.</summary>
public static class SettLimits
{
    private const string EndsLabel = "closest ends";
    private const string PicksLabel = "closest picks";

    private static readonly Source JamOrigin = Source.Published("Balasubramanian, Fabric geometry (lecture notes); locus from memory of Peirce 1937, floats after Love 1954");

    /// <summary>Ashenhurst (ends plus intersections) first, then the physical limits, then the methods that need a named family.</summary>
    /// <param name="question">Yarns and weave.</param>
    /// <param name="counts">Changes of face of the weave.</param>
    public static ImmutableArray<SettLimit> Of(SettQuestion question, WeaveCounts counts)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(counts);
        Derived<Length> warp = question.Warp.MeanDiameter();
        Derived<Length> weft = question.Weft.MeanDiameter();
        Derived<Length> crossingWarp = question.Warp.MeanCrossingDiameter(counts.TransitionsPerEnd);
        Derived<Length> crossingWeft = question.Weft.MeanCrossingDiameter(counts.TransitionsPerPick);
        double m1 = counts.MeanEndFloat;
        double m2 = counts.MeanPickFloat;

        var ashenhurst = new SettLimit(
            AshenhurstIntersections.Method,
            AshenhurstIntersections.Threads(EndsLabel, warp, crossingWeft, m1),
            AshenhurstIntersections.Threads(PicksLabel, weft, crossingWarp, m2),
            "The handweaver's maximum; shares for a purpose are taken of it.");
        var limits = ImmutableArray.CreateBuilder<SettLimit>();
        limits.Add(ashenhurst);
        limits.Add(new SettLimit(
            AshenhurstCurvature.Method,
            AshenhurstCurvature.Threads(EndsLabel, warp, crossingWeft, m1),
            AshenhurstCurvature.Threads(PicksLabel, weft, crossingWarp, m2),
            "Threads bend round each other at 60 degrees, both systems alike."));
        limits.Add(Jam(warp, weft, m1, m2, ashenhurst));
        if (WeaveFamilyFinder.Of(question.Weave) is { } family) AddFamily(limits, question, family, ashenhurst, m1, m2);
        return limits.ToImmutable();
    }

    private static SettLimit Jam(Derived<Length> warp, Derived<Length> weft, double m1, double m2, SettLimit ashenhurst)
    {
        double picksPerEnd = ashenhurst.Picks.Value.PerMetre / ashenhurst.Ends.Value.PerMetre;
        string proportion = picksPerEnd.ToString("0.###", CultureInfo.InvariantCulture);
        var rule = new Rule(
            PeirceJam.Method,
            $"√(1 − (t1 ÷ D)²) + √(1 − (t2 ÷ D)²) = 1, t = M × spacing − (M − 1) × diameter, at {proportion} picks to an end",
            JamOrigin);
        return new SettLimit(
            PeirceJam.Method,
            Derived.From<Sett>(EndsLabel, rule, warp, weft, (d1, d2) => 1 / PeirceJam.EndSpacing(d1, d2, m1, m2, picksPerEnd)),
            Derived.From<Sett>(PicksLabel, rule, warp, weft, (d1, d2) => picksPerEnd / PeirceJam.EndSpacing(d1, d2, m1, m2, picksPerEnd)),
            "The physical wall: no yarn is left straight between crossings.");
    }

    private static void AddFamily(
        ImmutableArray<SettLimit>.Builder limits, SettQuestion question, WeaveFamily family, SettLimit ashenhurst, double m1, double m2)
    {
        Derived<LinearDensity> warp = question.Warp.MeanLinearDensity();
        Derived<LinearDensity> weft = question.Weft.MeanLinearDensity();
        double meanFloat = Math.Max(m1, m2);
        string name = family switch { WeaveFamily.WarpRib => "warp rib", WeaveFamily.WeftRib => "weft rib", _ => family.ToString().ToLowerInvariant() };
        limits.Add(new SettLimit(
            Brierley.Method,
            Brierley.Square(EndsLabel, family, meanFloat, warp, weft),
            Brierley.Square(PicksLabel, family, meanFloat, warp, weft),
            $"Found by weaving, for {name} with as many picks as ends."));
        if (family is WeaveFamily.Twill or WeaveFamily.Satin or WeaveFamily.Hopsack)
        {
            limits.Add(new SettLimit(
                LawRule.Method,
                LawRule.Threads(ashenhurst.Ends, family, m1),
                LawRule.Threads(ashenhurst.Picks, family, m2),
                "Recalled with low confidence; shown to compare, not to plan by."));
        }
    }
}
