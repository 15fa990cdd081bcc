using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Wordings;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Charts;

/// <summary>A bar of ten centimetres over one of four inches, to see whether a page came out at true size.</summary>
internal static class MeasureBar
{
    private const float PointsPerInch = 72;
    private const float PointsPerCentimetre = PointsPerInch / 2.54f;
    private const float Bar = 4;
    private const float Middle = 17;

    /// <summary>The bar.</summary>
    /// <param name="language">Language of its words; English if left out.</param>
    public static Figure Draw(Wording? language = null)
    {
        Wording wording = language ?? Wording.English;
        var marks = new List<Mark>();
        Add(marks, 10, PointsPerCentimetre, Middle - Bar, Middle - Bar - 4, "cm", "cm");
        Add(marks, 4, PointsPerInch, Middle, Middle + Bar + 10, "in", wording.Tell("in"));
        return new Figure(4 * PointsPerInch + 14, Middle + Bar + 12, wording.Tell("A bar of 10 cm and of 4 inches"), [.. marks]);
    }

    // Every second unit is filled, so that the eye counts them.
    private static void Add(List<Mark> marks, int units, float unit, float top, float baseline, string name, string unitWord)
    {
        ImmutableArray<Box> dark = [.. Enumerable.Range(0, units).Where(i => i % 2 == 0).Select(i => new Box(i * unit, top, unit, Bar))];
        marks.Add(new BoxesMark("unit", dark, Palette.Ink));
        marks.Add(new BoxesMark($"bar-{name}", [new Box(0, top, units * unit, Bar)], null, Palette.Ink, 0.5f));
        var style = new TextStyle(FontFace.Text, 8, Palette.ThinInk);
        int step = units == 10 ? 5 : 2;
        for (int i = 0; i <= units; i += step)
        {
            string text = i.ToString(CultureInfo.InvariantCulture);
            marks.Add(new LabelMark("number", i == units ? $"{text} {unitWord}" : text, i * unit, baseline, i == 0 ? LabelAlign.Start : LabelAlign.Middle, style));
        }
    }
}
