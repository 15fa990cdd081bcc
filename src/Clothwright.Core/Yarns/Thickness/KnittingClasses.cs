using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>Thickness classes and names of hand-knitting yarn. Answers are sets: the classes overlap.</summary>
public static class KnittingClasses
{
    // Gauges and wraps are counted to the half at best, grists to the yard.
    private const double CountedToHalf = 0.5;
    private const double CountedToOne = 0.5;

    private static readonly Source Charts = Source.Published("ply-name charts (docslib.org 13704346 and others)");

    static KnittingClasses()
    {
        All = [.. EmbeddedTable.Rows("knitting-classes.table.txt").Select(ReadClass)];
        Names = [.. EmbeddedTable.Rows("knitting-names.table.txt").Select(ReadName)];
    }

    /// <summary>Classes 0 to 7.</summary>
    public static ImmutableArray<KnittingClass> All { get; }

    /// <summary>Every name once for each region.</summary>
    public static ImmutableArray<KnittingName> Names { get; }

    /// <summary>Classes whose gauge a count of stitches falls in.</summary>
    /// <param name="stitchesPerFourInches">Stitches in 4 inches (10 cm) of stocking stitch; above 0.</param>
    public static ImmutableArray<KnittingClass> FromGauge(double stitchesPerFourInches) =>
        Within(stitchesPerFourInches, c => c.StitchesPerFourInches, CountedToHalf);

    /// <summary>Classes whose wraps a measured number falls in.</summary>
    /// <param name="wraps">Wraps touching, wound by hand.</param>
    public static ImmutableArray<KnittingClass> FromWraps(Sett wraps) => Within(wraps.PerInch, c => c.WrapsPerInch, CountedToHalf);

    /// <summary>Class of a yarn by its length per mass; holds for wool-like bulk.</summary>
    /// <param name="linearDensity">Mass per length.</param>
    public static ImmutableArray<KnittingClass> FromGrist(LinearDensity linearDensity) =>
        Within(Math.Round(linearDensity.YardsPerPound, MidpointRounding.AwayFromZero), c => c.YardsPerPound, CountedToOne - 1e-9);

    /// <summary>Finds the thicknesses that a name can mean.</summary>
    /// <param name="text">For example <c>DK</c>, <c>8 ply</c>, <c>fingering weight</c>.</param>
    /// <param name="region">Where the name was met; null to look everywhere.</param>
    /// <param name="where">Field path for a problem.</param>
    /// <returns>One entry for each region that uses the name, or a problem that suggests near names.</returns>
    public static Parsed<ImmutableArray<KnittingName>> FromName(string text, KnittingRegion? region = null, string where = "thickness")
    {
        ArgumentNullException.ThrowIfNull(text);
        string wanted = text.Trim().ToLowerInvariant().Replace("weight", "", StringComparison.Ordinal).Trim();
        if (wanted.EndsWith("ply", StringComparison.Ordinal)) wanted = wanted[..^3].TrimEnd(' ', '-') + "-ply";
        ImmutableArray<KnittingName> found = [.. Names.Where(n => n.Name == wanted && (region is null || n.Region == region))];
        if (found.Length > 0) return found;
        IReadOnlyList<string> near = NearestName.Several(wanted, Names.Select(n => n.Name));
        return new InputProblem(
            $"{TextCursor.Quote(text)} is not a hand-knitting thickness{InRegion(region)}.",
            where,
            near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}?" : "Use a name such as lace, fingering, sport, DK, worsted, bulky, 4-ply or 8-ply.")
        {
            Text = text,
            Position = 0,
        };
    }

    private static string InRegion(KnittingRegion? region) => region switch
    {
        KnittingRegion.UnitedStates => " in the United States",
        KnittingRegion.UnitedKingdom => " in the United Kingdom",
        KnittingRegion.Australia => " in Australia and New Zealand",
        _ => "",
    };

    private static ImmutableArray<KnittingClass> Within(double value, Func<KnittingClass, (double? Low, double? High)> range, double margin) =>
        [.. All.Where(c => range(c) is var (low, high) && (low ?? high) is not null && !(value < low - margin) && !(value > high + margin))];

    private static KnittingClass ReadClass(ImmutableDictionary<string, string> row) => new(
        int.Parse(row["class"], CultureInfo.InvariantCulture),
        row["name"],
        Range(row["stitches"]),
        Range(row["wraps"]),
        Range(row["grist"]));

    private static KnittingName ReadName(ImmutableDictionary<string, string> row)
    {
        (double? low, double? high) = Range(row["m/100g"]);
        return new KnittingName(
            row["region"] switch { "US" => KnittingRegion.UnitedStates, "UK" => KnittingRegion.UnitedKingdom, _ => KnittingRegion.Australia },
            row["name"],
            [.. row["class"].Split(',').Select(c => All[int.Parse(c, CultureInfo.InvariantCulture)])],
            Derived.FromRange($"mass per length of {row["name"]} yarn", LinearDensity.FromTex(1e5 / high!.Value), LinearDensity.FromTex(1e5 / low!.Value), Charts));
    }

    private static (double? Low, double? High) Range(string cell)
    {
        if (cell.Length == 0) return (null, null);
        string[] edges = cell.Split('-', StringSplitOptions.TrimEntries);
        return (Edge(edges[0]), Edge(edges[1]));

        static double? Edge(string text) => text.Length == 0 ? null : double.Parse(text, CultureInfo.InvariantCulture);
    }
}
