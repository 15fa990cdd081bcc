using System.Text;
using SkiaSharp;

namespace Clothwright.Drawing.Fonts;

/// <summary>A line of text as glyphs of the bundled fonts: measured once, then drawn anywhere.</summary>
internal sealed class TextRun
{
    private readonly List<GlyphRun> _pieces = [];

    /// <param name="text">The text; cleaned here.</param>
    /// <param name="face">The wanted face; signs that it lacks are taken from another bundled face.</param>
    /// <param name="size">Size in points.</param>
    public TextRun(string text, FontFace face, float size)
    {
        Text = PrintableText.Clean(text);
        Size = size;
        var glyphs = new List<ushort>();
        var signs = new List<int>();
        FontFace current = face;
        foreach (Rune rune in SpelledSigns.In(Text).EnumerateRunes())
        {
            (FontFace next, ushort glyph) = GlyphChoice.Of(face, rune.Value);
            if (next != current)
            {
                Append(current, glyphs, signs);
                current = next;
            }

            glyphs.Add(glyph);
            signs.Add(rune.Value);
        }

        Append(current, glyphs, signs);
    }

    /// <summary>The text as it is drawn.</summary>
    public string Text { get; }

    /// <summary>Size in points.</summary>
    public float Size { get; }

    /// <summary>Width in points.</summary>
    public float Width { get; private set; }

    /// <summary>Whether the sentence goes on with another word on the next line, so that a blank belongs between them.</summary>
    public bool GoesOn { get; init; }

    /// <summary>The glyphs, face by face.</summary>
    public IReadOnlyList<GlyphRun> Pieces => _pieces;

    /// <summary>Draws the line.</summary>
    /// <param name="canvas">Where to draw.</param>
    /// <param name="x">Left end, in points.</param>
    /// <param name="baseline">Baseline, in points.</param>
    /// <param name="paint">The ink.</param>
    public void Draw(SKCanvas canvas, float x, float baseline, SKPaint paint)
    {
        foreach ((FontFace face, ushort[] glyphs, _, float[] positions) in _pieces)
        {
            using SKFont font = Font(face, Size);
            using var builder = new SKTextBlobBuilder();
            builder.AddHorizontalRun(glyphs, font, positions, 0);
            using SKTextBlob? blob = builder.Build();
            if (blob is not null) canvas.DrawText(blob, x, baseline, paint);
        }
    }

    private static SKFont Font(FontFace face, float size) => new(FontShelf.Of(face), size)
    {
        Subpixel = true,
        Hinting = SKFontHinting.None,
        LinearMetrics = true,
        Edging = SKFontEdging.Antialias,
    };

    private void Append(FontFace face, List<ushort> glyphs, List<int> signs)
    {
        if (glyphs.Count == 0) return;
        ushort[] piece = [.. glyphs];
        int[] written = [.. signs];
        glyphs.Clear();
        signs.Clear();
        FaceMetrics metrics = FaceMetrics.Of(face);
        var positions = new float[piece.Length];
        float x = Width;
        for (int i = 0; i < piece.Length; i++)
        {
            if (i > 0) x += metrics.Kerning(piece[i - 1], piece[i]) * Size;
            positions[i] = x;
            x += metrics.Width(piece[i]) * Size;
        }

        _pieces.Add(new GlyphRun(face, piece, written, positions));
        Width = x;
    }
}
