using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Publishing;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Faces;

/// <summary>A side of a cloth at true size with centimetre ticks and its name.</summary>
internal static class ClothPanel
{
    private const float Band = 15;
    private const float PointsPerCentimetre = 72 / 2.54f;

    /// <summary>The side with ticks at the left and below, and its name under them.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="face">The side.</param>
    /// <param name="frame">How much of it.</param>
    public static Figure Draw(LookDescription cloth, Face face, ClothFrame frame)
    {
        Figure side = ClothFigure.Draw(cloth, face, frame);
        var number = new TextStyle(FontFace.Text, 6, Palette.ThinInk);
        var marks = new List<Mark>(side.Marks.Select(m => Shift(m, Band)));
        var ticks = new List<ImmutableArray<(float X, float Y)>>();
        for (int cm = 0; cm * PointsPerCentimetre <= side.Width + 0.01f; cm++)
        {
            float x = Band + cm * PointsPerCentimetre;
            float tick = cm % 5 == 0 ? 5 : 3;
            ticks.Add([(x, side.Height + 1), (x, side.Height + 1 + tick)]);
            if (cm % 5 == 0) marks.Add(new LabelMark("centimetre", Text(cm), x, side.Height + 12, LabelAlign.Middle, number));
        }

        for (int cm = 0; cm * PointsPerCentimetre <= side.Height + 0.01f; cm++)
        {
            float y = side.Height - cm * PointsPerCentimetre;
            float tick = cm % 5 == 0 ? 5 : 3;
            ticks.Add([(Band - 1, y), (Band - 1 - tick, y)]);
            if (cm % 5 == 0 && cm > 0) marks.Add(new LabelMark("centimetre", Text(cm), Band - 7, y + 2.2f, LabelAlign.End, number));
        }

        marks.Add(new LinesMark("ticks", [.. ticks], Palette.ThinInk, 0.5f));
        string name = face == Face.Front ? "Front" : "Back, turned over left to right";
        marks.Add(new LabelMark("side-name", name, Band, side.Height + 25, LabelAlign.Start, new TextStyle(FontFace.Strong, 8.4f, Palette.Ink)));
        return new Figure(side.Width + Band, side.Height + 28, side.Title, [.. marks]);
    }

    private static string Text(int cm) => cm == 0 ? "0 cm" : cm.ToString(CultureInfo.InvariantCulture);

    private static Mark Shift(Mark mark, float right) =>
        mark is BoxesMark boxes ? boxes with { Boxes = [.. boxes.Boxes.Select(b => b with { X = b.X + right })] } : mark;
}
