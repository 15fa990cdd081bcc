using Clothwright.Core.Colours;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;
using Clothwright.Drawing.Pdf.Tags;
using Clothwright.Drawing.Pdf.Writing;

namespace Clothwright.Drawing.Pdf;

/// <summary>Draws text, lines, boxes and figures on a page.</summary>
internal static class PageInk
{
    /// <summary>Draws one line of text.</summary>
    /// <param name="canvas">The page.</param>
    /// <param name="run">The line.</param>
    /// <param name="style">Its style.</param>
    /// <param name="x">Left end.</param>
    /// <param name="y">Upper edge of the line.</param>
    /// <param name="owner">The part of the document that it belongs to; null for furniture of the page.</param>
    public static void Text(PageCanvas canvas, TextRun run, TextStyle style, float x, float y, TagNode? owner) =>
        canvas.Text(run, x, Baseline(style, y), style.Colour, owner);

    /// <summary>Draws lines of text one under another.</summary>
    /// <param name="canvas">The page.</param>
    /// <param name="lines">The lines.</param>
    /// <param name="style">Their style.</param>
    /// <param name="x">Left edge.</param>
    /// <param name="y">Upper edge.</param>
    /// <param name="owner">The part of the document that they belong to.</param>
    /// <param name="rightEdge">Edge against which the lines stand; null for the left edge.</param>
    public static void Lines(PageCanvas canvas, IReadOnlyList<TextRun> lines, TextStyle style, float x, float y, TagNode? owner, float? rightEdge = null)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            float left = rightEdge is { } right ? right - lines[i].Width : x;
            Text(canvas, lines[i], style, left, y + i * style.LineHeight, owner);
        }
    }

    /// <summary>Draws a thin level line.</summary>
    public static void Rule(PageCanvas canvas, float x, float y, float width, SrgbColour colour, float thickness = 0.6f) =>
        canvas.Fill([new Box(x, y - thickness / 2, width, thickness)], 0, 0, colour, null);

    /// <summary>Fills a box, with a thin outline if asked.</summary>
    public static void Fill(PageCanvas canvas, float x, float y, float width, float height, SrgbColour colour, SrgbColour? outline = null)
    {
        canvas.Fill([new Box(x, y, width, height)], 0, 0, colour, null);
        if (outline is { } edge) canvas.Outline([new Box(x, y, width, height)], 0, 0, edge, 0.5f, null);
    }

    /// <summary>Draws an empty box to tick by hand.</summary>
    public static void TickBox(PageCanvas canvas, float x, float y, float size) =>
        canvas.Outline([new Box(x, y, size, size)], 0, 0, Palette.Ink, 0.7f, null);

    /// <summary>Draws a figure with its upper left corner at a place.</summary>
    /// <param name="canvas">The page.</param>
    /// <param name="figure">The figure.</param>
    /// <param name="x">Left edge.</param>
    /// <param name="y">Upper edge.</param>
    /// <param name="owner">The part of the document that it belongs to.</param>
    public static void Figure(PageCanvas canvas, Figure figure, float x, float y, TagNode owner)
    {
        foreach (Mark mark in figure.Marks)
        {
            switch (mark)
            {
                case BoxesMark boxes:
                    if (boxes.Fill is { } fill) canvas.Fill(boxes.Boxes, x, y, fill, owner);
                    if (boxes.Stroke is { } stroke) canvas.Outline(boxes.Boxes, x, y, stroke, boxes.StrokeWidth, owner);
                    break;
                case LinesMark lines:
                    canvas.Lines(lines, x, y, owner);
                    break;
                case LabelMark label:
                    var run = new TextRun(label.Text, label.Style.Face, label.Style.Size);
                    float left = label.Align switch
                    {
                        LabelAlign.Middle => label.X - run.Width / 2,
                        LabelAlign.End => label.X - run.Width,
                        _ => label.X,
                    };
                    canvas.Text(run, x + left, y + label.Baseline, label.Style.Colour, owner);
                    break;
                default:
                    throw new ArgumentException($"A {mark.GetType().Name} cannot be drawn on a page.", nameof(figure));
            }
        }

        owner.Place = new Box(x, canvas.Height - y - figure.Height, figure.Width, figure.Height);
    }

    // The letters stand a little above the middle of their line.
    private static float Baseline(TextStyle style, float y) => y + style.LineHeight / 2 + style.Size * 0.36f;
}
