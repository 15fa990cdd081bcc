using Clothwright.Core.Weaves;
using SkiaSharp;

namespace Clothwright.Drawing.Tests.Images;

/// <summary>Draws pictures of drawdowns for the tests, pixel by pixel, so that nothing of the reader is used.</summary>
internal sealed record TestPicture(Drawdown Cloth)
{
    public int CellWidth { get; init; } = 10;

    public int CellHeight { get; init; } = 10;

    public int Line { get; init; }

    public int Margin { get; init; }

    public SKColor Dark { get; init; } = SKColors.Black;

    public SKColor Light { get; init; } = SKColors.White;

    public SKColor LineColour { get; init; } = SKColors.Gray;

    public float Scale { get; init; } = 1;

    public bool Smooth { get; init; }

    public SKEncodedImageFormat Format { get; init; } = SKEncodedImageFormat.Png;

    /// <summary>The file; first pick at the bottom.</summary>
    public byte[] File()
    {
        int width = Cloth.Ends * (CellWidth + Line) + Line + 2 * Margin;
        int height = Cloth.Picks * (CellHeight + Line) + Line + 2 * Margin;
        using var bitmap = new SKBitmap(width, height);
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(Light);
            if (Line > 0) Fill(canvas, Margin, Margin, width - 2 * Margin, height - 2 * Margin, LineColour);
            for (int pick = 0; pick < Cloth.Picks; pick++)
            {
                for (int end = 0; end < Cloth.Ends; end++)
                {
                    int x = Margin + Line + end * (CellWidth + Line);
                    int y = Margin + Line + (Cloth.Picks - 1 - pick) * (CellHeight + Line);
                    Fill(canvas, x, y, CellWidth, CellHeight, Cloth[pick, end] ? Dark : Light);
                }
            }
        }

        using SKBitmap scaled = Scale == 1
            ? bitmap.Copy()
            : bitmap.Resize(new SKSizeI((int)(width * Scale), (int)(height * Scale)), new SKSamplingOptions(Smooth ? SKFilterMode.Linear : SKFilterMode.Nearest));
        using SKData data = scaled.Encode(Format, 90);
        return data.ToArray();
    }

    private static void Fill(SKCanvas canvas, int x, int y, int width, int height, SKColor colour)
    {
        using var paint = new SKPaint { Color = colour, IsAntialias = false };
        canvas.DrawRect(x, y, width, height, paint);
    }
}
