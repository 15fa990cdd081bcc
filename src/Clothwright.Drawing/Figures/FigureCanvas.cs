using Clothwright.Core.Colours;
using Clothwright.Drawing.Fonts;
using SkiaSharp;

namespace Clothwright.Drawing.Figures;

/// <summary>Draws a figure on a canvas: a page of a document or the pixels of a picture.</summary>
internal static class FigureCanvas
{
    /// <summary>Draws the figure with its upper left corner at a place.</summary>
    /// <param name="canvas">Where to draw.</param>
    /// <param name="figure">The figure.</param>
    /// <param name="x">Left edge, in points.</param>
    /// <param name="y">Upper edge, in points.</param>
    public static void Draw(SKCanvas canvas, Figure figure, float x, float y)
    {
        canvas.Save();
        canvas.Translate(x, y);
        foreach (Mark mark in figure.Marks) DrawMark(canvas, mark);
        canvas.Restore();
    }

    /// <summary>The figure as PNG on paper.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="stream">Where to write; stays open.</param>
    /// <param name="dotsPerInch">Dots per inch, above 0.</param>
    public static void WritePng(Figure figure, Stream stream, double dotsPerInch)
    {
        float scale = (float)(dotsPerInch / 72);
        var size = new SKImageInfo(Math.Max(1, (int)MathF.Ceiling(figure.Width * scale)), Math.Max(1, (int)MathF.Ceiling(figure.Height * scale)), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var bitmap = new SKBitmap(size);
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(ToSkia(Palette.Paper));
            canvas.Scale(scale);
            Draw(canvas, figure, 0, 0);
        }

        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        data.SaveTo(stream);
    }

    /// <summary>The colour as the drawing library names it.</summary>
    /// <param name="colour">The colour.</param>
    public static SKColor ToSkia(SrgbColour colour) => new(colour.Red, colour.Green, colour.Blue);

    private static void DrawMark(SKCanvas canvas, Mark mark)
    {
        using var paint = new SKPaint { IsAntialias = true };
        switch (mark)
        {
            case BoxesMark boxes:
                using (var path = new SKPath())
                {
                    foreach (Box box in boxes.Boxes) path.AddRect(SKRect.Create(box.X, box.Y, box.Width, box.Height));
                    if (boxes.Fill is { } fill)
                    {
                        paint.Color = ToSkia(fill);
                        canvas.DrawPath(path, paint);
                    }

                    if (boxes.Stroke is { } stroke)
                    {
                        paint.Style = SKPaintStyle.Stroke;
                        paint.StrokeWidth = boxes.StrokeWidth;
                        paint.Color = ToSkia(stroke);
                        canvas.DrawPath(path, paint);
                    }
                }

                break;
            case LinesMark lines:
                using (var path = new SKPath())
                using (SKPathEffect? dashes = lines.Dashed ? SKPathEffect.CreateDash([1.5f, 1.5f], 0) : null)
                {
                    foreach (var chain in lines.Chains)
                    {
                        for (int i = 0; i < chain.Length; i++)
                        {
                            if (i == 0) path.MoveTo(chain[i].X, chain[i].Y);
                            else path.LineTo(chain[i].X, chain[i].Y);
                        }
                    }

                    paint.Style = SKPaintStyle.Stroke;
                    paint.StrokeWidth = lines.LineWidth;
                    paint.Color = ToSkia(lines.Colour);
                    paint.PathEffect = dashes;
                    canvas.DrawPath(path, paint);
                }

                break;
            case LabelMark label:
                var run = new TextRun(label.Text, label.Style.Face, label.Style.Size);
                float x = label.Align switch
                {
                    LabelAlign.Middle => label.X - run.Width / 2,
                    LabelAlign.End => label.X - run.Width,
                    _ => label.X,
                };
                paint.Color = ToSkia(label.Style.Colour);
                run.Draw(canvas, x, label.Baseline, paint);
                break;
            default:
                throw new ArgumentException($"A {mark.GetType().Name} cannot be drawn.", nameof(mark));
        }
    }
}
