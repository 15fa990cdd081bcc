using System.Collections.Immutable;
using System.Reflection;
using Clothwright.Core.Quantities;

namespace Clothwright.Architecture.Tests;

public class UnitNameTests
{
    // Whole types, or single members, whose numbers need no unit in the name, and why.
    private static readonly Dictionary<string, string> Reviewed = new(StringComparer.Ordinal)
    {
        ["Core.Quantities.*.BaseValue"] = "in the base unit of the kind, which the type names",
        ["Core.Quantities.*.FromBase(baseValue)"] = "in the base unit of the kind, which the type names",
        ["Core.Quantities.QuantityText.Format(baseValue)"] = "in the base unit of the kind given beside it",
        ["Core.Quantities.Money.Amount"] = "in the currency that the worksheet names",
        ["Core.Quantities.Money.FromAmount(value)"] = "in the currency that the worksheet names",
        ["Core.Workings"] = "workings hold any quantity in the base unit of its kind",
        ["Core.Calibration.LearnedValue.WeightOfMeasures"] = "a weight of statistics, 0 to 1",
        ["Core.Cloths.Geometry.PeirceGeometry"] = "ratios of lengths: all in one unit, whichever it is",
        ["Core.Cloths.Geometry.CrimpExchange"] = "ratios of lengths: all in one unit, whichever it is",
        ["Core.Cloths.Geometry.ThreadSection"] = "ratios of lengths: all in one unit, whichever it is",
        ["Core.Cloths.Geometry.WeaveGeometry"] = "ratios of lengths: all in one unit, whichever it is",
        ["Core.Setts.Limits.PeirceJam"] = "ratios of lengths: all in one unit, whichever it is",
        ["Core.Setts.Limits.AshenhurstCurvature.Spacing"] = "in the unit of the diameters",
        ["Core.Setts.Limits.AshenhurstIntersections.Spacing"] = "in the unit of the diameters",
        ["Core.Setts.Limits.Brierley.Picks"] = "in the unit of the setts given",
        ["Core.Setts.ComparedProperty.Differences"] = "fractions of the first",
        ["Core.Yarns.YarnCount.ResultantIn()"] = "a number in the count system asked for",
        ["Core.Yarns.YarnCount.StatedResultant"] = "a number in the count system of the yarn",
        ["Core.Cloths.Look.Light.BodyReference.Of()"] = "light from 0 to 1",
        ["Core.Cloths.Look.Light.Direction"] = "a unit vector",
        ["Core.Cloths.Look.Light.LightTable"] = "places across a thread, -1 to 1, and slopes",
        ["Core.Cloths.Look.Light.Lighting"] = "light from 0 to 1",
        ["Core.Cloths.Look.Light.ThreadLight"] = "light from 0 to 1",
        ["Core.Cloths.Look.Light.ThreadShading.At(across)"] = "a place across the thread, -1 to 1",
        ["Core.Cloths.Look.LookDescription.WarpRise"] = "a share of the thickness",
        ["Core.Cloths.Look.Lustre"] = "shares of light and of the diameter, each said at its member",
        ["Core.Cloths.Look.Pictures.ClothView"] = "in the one unit of the view, which its type tells",
        ["Core.Cloths.Look.Pictures.LookArrays"] = "numbers packed for the painter, each array told at its member",
        ["Core.Cloths.Look.Places"] = "places along and across the cloth in the one unit of the view",
        ["Core.Cloths.Look.Sections.CrimpWave"] = "in the one unit of the view",
        ["Core.Weaves.Pictures.DrawdownTones.Read(width)"] = "dots of a picture",
        ["Core.Yarns.YarnMatch.Difference"] = "a colour difference by CIEDE2000",
        ["Core.Yarns.YarnQuery.MostDifferent"] = "a colour difference by CIEDE2000",
        ["Core.Cloths.Faces.PatternLegibility.LightnessDifference"] = "in L* of a standard colour space",
        ["Core.Plans.WeftChoice.WeftProposal.FaceDifference"] = "a colour difference by CIEDE2000",
        ["Core.Plans.WeftChoice.WeftProposal.ThicknessDifference"] = "a fraction of the present thickness",
        ["Core.Colours.Stripes"] = "weights and proportions of stripes",
        ["Core.Colours.NoticedDifference"] = "coordinates of a standard colour space",
        ["Core.Colours.CieLab"] = "coordinates of a standard colour space",
        ["Core.Colours.CieXyz"] = "coordinates of a standard colour space",
        ["Core.Colours.OkLab"] = "coordinates of a published colour space",
        ["Core.Colours.LinearColour"] = "light from 0 to 1",
        ["Core.Colours.ColourDifference"] = "colour difference by the formula the method names",
        ["Core.Cloths.Look.Tilts"] = "ratios of lengths: all in one unit, whichever it is",
        ["Core.Photographs.Palettes"] = "colour differences by CIEDE2000, and shares",
        ["Core.Photographs.Pictures.PhotoPoint"] = "pixels of the photograph",
        ["Core.Photographs.Pictures.Photograph"] = "pixels",
        ["Core.Photographs.Spectra.RadixTwoTransform"] = "values of any unit, transformed",
        ["Core.Photographs.PhotoScale.RelativeDeviation"] = "a share of the scale",
        ["Core.Photographs.ThreadSetCount.Margin"] = "a share, 0 to 1",
        ["Core.Photographs.ThreadSetCount.Strength"] = "a share, 0 to 1",
        ["Core.Plans.Ends.RepeatFit"] = "ends, before they are rounded to whole ones",
        ["Core.Plans.Briefs.PieceMakes.WidthsPerLayer()"] = "a count",
        ["Core.Weaves.Analysis.Floats.FloatCount.Length"] = "threads passed over",
        ["Core.Weaves.Analysis.Floats.FloatTally.LongestLength"] = "threads passed over",
        ["Core.Weaves.Analysis.Floats.FloatTally.MeanLength"] = "threads passed over",
        ["Core.Weaves.Analysis.Floats.ThreadFloat.Length"] = "threads passed over",
        ["Core.Weaves.Structures.BlockRun.Length"] = "units of a profile",
        ["Interchange.Wif.WifColourRange"] = "levels of the file's own colour range",
        ["Interchange.Wif.WifLength.ToLength(value)"] = "the unit of the file is given beside it",
        ["Interchange.Wif.WifThreads"] = "in the unit the file names, which stands beside it, or a zoom without unit",
    };

    private static readonly IReadOnlyList<string> Found = NakedNumbers.In(new[] { "Clothwright.Core", "Clothwright.Interchange", "Clothwright.Drawing", "Clothwright.Solving" }
        .SelectMany(name => Assembly.Load(name).GetExportedTypes()));

    [Fact]
    public void A_public_number_says_its_unit()
    {
        string[] naked = [.. Found.Where(breach => !Reviewed.Keys.Any(known => Covers(known, breach)))];
        Assert.True(naked.Length == 0, $"These say neither unit nor kind of pure number: {string.Join(", ", naked)}.");
    }

    [Fact]
    public void Every_reviewed_exception_is_still_met()
    {
        string[] stale = [.. Reviewed.Keys.Where(known => !Found.Any(breach => Covers(known, breach)))];
        Assert.True(stale.Length == 0, $"These are met no more, take them off the list: {string.Join(", ", stale)}.");
    }

    [Fact]
    public void A_planted_breach_is_found() =>
        Assert.Equal(
            [
                "Architecture.Tests.UnitNameTests+Naked.Depths",
                "Architecture.Tests.UnitNameTests+Naked.Span()",
                "Architecture.Tests.UnitNameTests+Naked.Warp(allowed)",
                "Architecture.Tests.UnitNameTests+Naked.Width",
                "Architecture.Tests.UnitNameTests+Naked.Within",
            ],
            NakedNumbers.In([typeof(Naked)]));

    private static bool Covers(string known, string breach) => known.Split(".*", 2) is [var space, var member]
        ? breach.StartsWith(space + ".", StringComparison.Ordinal) && breach.EndsWith(member, StringComparison.Ordinal)
        : breach == known || breach.StartsWith(known + ".", StringComparison.Ordinal)
            || breach.StartsWith(known + "(", StringComparison.Ordinal);

    private sealed class Naked
    {
        public double Within { get; init; } // "inch" is no word of it, nor is "in"

        public int Width { get; init; }

        public ImmutableArray<double> Depths { get; init; } = [];

        public int Ends { get; init; }

        public double ReedWidthInches { get; init; }

        public double WeftShare { get; init; }

        public Length Reed { get; init; }

        public double Span() => Within;

        public Length Warp(double allowed) => Reed * allowed;

        public Length WarpOfMetres(double allowed) => Reed * allowed;
    }
}
