using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Quantities;
using Clothwright.Core.Wordings;
using Clothwright.Drawing.Faces;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;
using Clothwright.Drawing.Pdf.Tags;
using Clothwright.Drawing.Pdf.Writing;

namespace Clothwright.Drawing.Pdf;

/// <summary>A side of a cloth at true size with centimetre ticks and its name.</summary>
internal sealed class ClothPanel
{
    private const float Band = 15;
    private const float Foot = 28;
    private const float PointsPerCentimetre = 72 / 2.54f;
    private const double DotsPerInch = 200;
    private readonly JpegPicture _cloth;
    private readonly Figure _ticks;
    private readonly Box _place;

    /// <param name="cloth">The cloth.</param>
    /// <param name="face">The side.</param>
    /// <param name="frame">How much of it.</param>
    /// <param name="wording">Language of its name; English if left out.</param>
    public ClothPanel(LookDescription cloth, Face face, ClothFrame frame, Wording? wording = null)
    {
        float width = Points(frame.Width);
        float height = Points(frame.Height);
        _cloth = ClothPicture.Print(cloth, face, DotsPerInch, frame);
        _place = new Box(Band, 0, width, height);
        _ticks = Ticks(width, height, face, wording ?? Wording.English);
    }

    /// <summary>Width in points.</summary>
    public float Width => _ticks.Width;

    /// <summary>Height in points of a panel that shows this much of a cloth.</summary>
    /// <param name="frame">How much.</param>
    public static float HeightOf(ClothFrame frame) => Points(frame.Height) + Foot;

    /// <summary>Height in points.</summary>
    public float Height => _ticks.Height;

    /// <summary>What the picture shows, in a few words.</summary>
    public string Title => _ticks.Title;

    /// <summary>Draws the side.</summary>
    /// <param name="canvas">The page.</param>
    /// <param name="x">Left edge.</param>
    /// <param name="y">Upper edge.</param>
    /// <param name="owner">The part of the document that it belongs to.</param>
    public void Draw(PageCanvas canvas, float x, float y, TagNode owner)
    {
        canvas.Picture(_cloth, _place with { X = _place.X + x, Y = _place.Y + y }, owner);
        PageInk.Figure(canvas, _ticks, x, y, owner);
    }

    private static Figure Ticks(float width, float height, Face face, Wording wording)
    {
        var number = new TextStyle(FontFace.Text, 6, Palette.ThinInk);
        var marks = new List<Mark>();
        var ticks = new List<ImmutableArray<(float X, float Y)>>();
        for (int cm = 0; cm * PointsPerCentimetre <= width + 0.01f; cm++)
        {
            float x = Band + cm * PointsPerCentimetre;
            float tick = cm % 5 == 0 ? 5 : 3;
            ticks.Add([(x, height + 1), (x, height + 1 + tick)]);
            if (cm % 5 == 0) marks.Add(new LabelMark("centimetre", Text(cm), x, height + 12, LabelAlign.Middle, number));
        }

        for (int cm = 0; cm * PointsPerCentimetre <= height + 0.01f; cm++)
        {
            float y = height - cm * PointsPerCentimetre;
            float tick = cm % 5 == 0 ? 5 : 3;
            ticks.Add([(Band - 1, y), (Band - 1 - tick, y)]);
            if (cm % 5 == 0 && cm > 0) marks.Add(new LabelMark("centimetre", Text(cm), Band - 7, y + 2.2f, LabelAlign.End, number));
        }

        marks.Add(new LinesMark("ticks", [.. ticks], Palette.ThinInk, 0.5f));
        string name = wording.Tell(face == Face.Front ? "Front" : "Back, turned over left to right");
        marks.Add(new LabelMark("side-name", name, Band, height + 25, LabelAlign.Start, new TextStyle(FontFace.Strong, 8.4f, Palette.Ink)));
        return new Figure(width + Band, height + Foot, wording.Tell(face == Face.Front ? "Front of the cloth" : "Back of the cloth"), [.. marks]);
    }

    private static string Text(int cm) => cm == 0 ? "0 cm" : cm.ToString(CultureInfo.InvariantCulture);

    private static float Points(Length length) => (float)(length.Metres * 72 / Length.MetresPerInch);
}
