using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Colours;
using Clothwright.Drawing.Faces;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;
using Clothwright.Drawing.Pdf.Tags;

namespace Clothwright.Drawing.Pdf.Writing;

/// <summary>One page: what is drawn on it, in points from its upper left corner, and which part of the document each stretch belongs to.</summary>
/// <param name="page">0-based page.</param>
/// <param name="width">Width in points.</param>
/// <param name="height">Height in points.</param>
/// <param name="fonts">The faces of the document.</param>
/// <param name="pictures">The pictures of dots in the document.</param>
internal sealed class PageCanvas(int page, float width, float height, PdfFonts fonts, PdfPictures pictures)
{
    private readonly PdfBytes _content = new();
    private TagNode? _owner;
    private bool _open;
    private SrgbColour? _fill;
    private SrgbColour? _stroke;

    /// <summary>Width in points.</summary>
    public float Width { get; } = width;

    /// <summary>Height in points.</summary>
    public float Height { get; } = height;

    /// <summary>Stretches that belong to parts of the document.</summary>
    public int Marks { get; private set; }

    /// <summary>Whether all that is drawn is furniture of the page, such as a table's head said once more.</summary>
    public bool IsFurniture { get; set; }

    /// <summary>Fills boxes.</summary>
    /// <param name="boxes">The boxes.</param>
    /// <param name="x">How far they are moved to the right.</param>
    /// <param name="y">How far they are moved down.</param>
    /// <param name="colour">Colour.</param>
    /// <param name="owner">What they belong to; null for furniture.</param>
    public void Fill(ImmutableArray<Box> boxes, float x, float y, SrgbColour colour, TagNode? owner)
    {
        Begin(owner);
        if (_fill != colour) Colour(colour, "rg\n");
        _fill = colour;
        Boxes(boxes, x, y);
        _content.Add("f\n");
    }

    /// <summary>Outlines boxes.</summary>
    /// <param name="boxes">The boxes.</param>
    /// <param name="x">How far they are moved to the right.</param>
    /// <param name="y">How far they are moved down.</param>
    /// <param name="colour">Colour.</param>
    /// <param name="lineWidth">Width of the line.</param>
    /// <param name="owner">What they belong to; null for furniture.</param>
    public void Outline(ImmutableArray<Box> boxes, float x, float y, SrgbColour colour, float lineWidth, TagNode? owner)
    {
        Begin(owner);
        Pen(colour, lineWidth, false);
        Boxes(boxes, x, y);
        _content.Add("S\n");
    }

    /// <summary>Draws lines.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="x">How far they are moved to the right.</param>
    /// <param name="y">How far they are moved down.</param>
    /// <param name="owner">What they belong to; null for furniture.</param>
    public void Lines(LinesMark lines, float x, float y, TagNode? owner)
    {
        Begin(owner);
        Pen(lines.Colour, lines.LineWidth, lines.Dashed);
        foreach (ImmutableArray<(float X, float Y)> chain in lines.Chains)
        {
            for (int i = 0; i < chain.Length; i++)
            {
                _content.Number(chain[i].X + x).Number(Height - chain[i].Y - y).Add(i == 0 ? "m " : "l ");
            }
        }

        _content.Add("S\n");
    }

    /// <summary>Writes a line of text.</summary>
    /// <param name="run">The line.</param>
    /// <param name="x">Left end.</param>
    /// <param name="baseline">Baseline.</param>
    /// <param name="colour">Colour.</param>
    /// <param name="owner">What it belongs to; null for furniture.</param>
    public void Text(TextRun run, float x, float baseline, SrgbColour colour, TagNode? owner)
    {
        if (run.Pieces.Count == 0) return;
        Begin(owner);
        if (_fill != colour) Colour(colour, "rg\n");
        _fill = colour;
        _content.Add("BT ");
        for (int i = 0; i < run.Pieces.Count; i++)
        {
            GlyphRun piece = run.Pieces[i];
            PdfFont font = fonts[piece.Face];
            _content.Add($"/{font.Name} ").Number(run.Size).Add("Tf 1 0 0 1 ").Number(x + piece.Positions[0], hundredths: false).Number(Height - baseline).Add("Tm [<");
            Glyphs(piece, font, run.Size, blankAfter: run.GoesOn && i == run.Pieces.Count - 1);
            _content.Add(">] TJ ");
        }

        _content.Add("ET\n");
    }

    /// <summary>Lays a picture of dots into a box.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="box">The box.</param>
    /// <param name="owner">What it belongs to; null for furniture.</param>
    public void Picture(JpegPicture picture, Box box, TagNode? owner)
    {
        Begin(owner);
        _content.Add("q ").Number(box.Width).Add("0 0 ").Number(box.Height).Number(box.X).Number(Height - box.Y - box.Height).Add($"cm /{pictures.Use(picture)} Do Q\n");
    }

    /// <summary>Ends the page.</summary>
    /// <returns>Its content.</returns>
    public ReadOnlySpan<byte> Finish()
    {
        End();
        return _content.Written;
    }

    private void Glyphs(GlyphRun piece, PdfFont font, float size, bool blankAfter)
    {
        FaceMetrics metrics = FaceMetrics.Of(piece.Face);
        for (int i = 0; i < piece.Glyphs.Length; i++)
        {
            ushort glyph = piece.Glyphs[i];
            if (i > 0)
            {
                float moved = piece.Positions[i] - piece.Positions[i - 1] - metrics.Width(piece.Glyphs[i - 1]) * size;
                if (Math.Abs(moved) > 0.004f) _content.Add("> ").Number(-moved / size * 1000).Add("<");
            }

            font.Use(glyph, piece.Signs[i]);
            _content.Add(glyph.ToString("X4", CultureInfo.InvariantCulture));
        }

        if (!blankAfter) return;
        GlyphChoice blank = GlyphChoice.Of(piece.Face, ' ');
        font.Use(blank.Glyph, ' ');
        _content.Add(blank.Glyph.ToString("X4", CultureInfo.InvariantCulture));
    }

    private void Boxes(ImmutableArray<Box> boxes, float x, float y)
    {
        foreach (Box box in boxes)
        {
            _content.Number(box.X + x).Number(Height - box.Y - y - box.Height).Number(box.Width).Number(box.Height).Add("re\n");
        }
    }

    private void Pen(SrgbColour colour, float lineWidth, bool dashed)
    {
        if (_stroke != colour) Colour(colour, "RG ");
        _stroke = colour;
        _content.Number(lineWidth).Add(dashed ? "w [1.5 1.5] 0 d\n" : "w [] 0 d\n");
    }

    private void Colour(SrgbColour colour, string how) => _content
        .Number(colour.Red / 255.0, hundredths: false).Number(colour.Green / 255.0, hundredths: false).Number(colour.Blue / 255.0, hundredths: false).Add(how);

    // Every stretch either belongs to a part of the document or is furniture (ISO 14289-1, section 7.1).
    private void Begin(TagNode? owner)
    {
        if (IsFurniture) owner = null;
        if (_open && ReferenceEquals(owner, _owner)) return;
        End();
        _open = true;
        _owner = owner;
        if (owner is null)
        {
            _content.Add("/Artifact BMC\n");
            return;
        }

        _content.Add(string.Create(CultureInfo.InvariantCulture, $"/{owner.Role} <</MCID {Marks}>> BDC\n"));
        owner.AddMark(page, Marks);
        Marks++;
    }

    private void End()
    {
        if (_open) _content.Add("EMC\n");
        _open = false;
    }
}
