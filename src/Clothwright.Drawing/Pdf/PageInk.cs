using Clothwright.Core.Colours;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;
using SkiaSharp;

namespace Clothwright.Drawing.Pdf;

/// <summary>Draws text, lines and boxes on a page.</summary>
internal static class PageInk
{
    /// <summary>Draws one line of text.</summary>
    /// <param name="canvas">The page.</param>
    /// <param name="run">The line.</param>
    /// <param name="style">Its style.</param>
    /// <param name="x">Left end.</param>
    /// <param name="y">Upper edge of the line.</param>
    public static void Text(SKCanvas canvas, TextRun run, TextStyle style, float x, float y)
    {
        using var paint = new SKPaint { IsAntialias = true, Color = FigureCanvas.ToSkia(style.Colour) };
        run.Draw(canvas, x, Baseline(style, y), paint);
    }

    /// <summary>Draws lines of text one under another.</summary>
    /// <param name="canvas">The page.</param>
    /// <param name="lines">The lines.</param>
    /// <param name="style">Their style.</param>
    /// <param name="x">Left edge.</param>
    /// <param name="y">Upper edge.</param>
    /// <param name="rightEdge">Edge against which the lines stand; null for the left edge.</param>
    public static void Lines(SKCanvas canvas, IReadOnlyList<TextRun> lines, TextStyle style, float x, float y, float? rightEdge = null)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            float left = rightEdge is { } right ? right - lines[i].Width : x;
            Text(canvas, lines[i], style, left, y + i * style.LineHeight);
        }
    }

    /// <summary>Draws a thin level line.</summary>
    public static void Rule(SKCanvas canvas, float x, float y, float width, SrgbColour colour, float thickness = 0.6f)
    {
        using var paint = new SKPaint { IsAntialias = true, Color = FigureCanvas.ToSkia(colour) };
        canvas.DrawRect(x, y - thickness / 2, width, thickness, paint);
    }

    /// <summary>Fills a box, with a thin outline if asked.</summary>
    public static void Fill(SKCanvas canvas, float x, float y, float width, float height, SrgbColour colour, SrgbColour? outline = null)
    {
        using var paint = new SKPaint { IsAntialias = true, Color = FigureCanvas.ToSkia(colour) };
        canvas.DrawRect(x, y, width, height, paint);
        if (outline is not { } edge) return;
        paint.Style = SKPaintStyle.Stroke;
        paint.StrokeWidth = 0.5f;
        paint.Color = FigureCanvas.ToSkia(edge);
        canvas.DrawRect(x, y, width, height, paint);
    }

    // The letters stand a little above the middle of their line.
    private static float Baseline(TextStyle style, float y) => y + style.LineHeight / 2 + style.Size * 0.36f;
}
