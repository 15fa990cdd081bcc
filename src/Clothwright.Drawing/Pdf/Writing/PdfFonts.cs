using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Pdf.Writing;

/// <summary>The faces that a document uses.</summary>
internal sealed class PdfFonts
{
    private readonly SortedDictionary<FontFace, PdfFont> _fonts = [];

    /// <summary>A face, from now on used.</summary>
    /// <param name="face">The face.</param>
    public PdfFont this[FontFace face]
    {
        get
        {
            if (!_fonts.TryGetValue(face, out PdfFont? font)) _fonts[face] = font = new PdfFont(face);
            return font;
        }
    }

    /// <summary>Writes the fonts.</summary>
    /// <param name="objects">Where to write.</param>
    /// <returns>The dictionary of fonts for the resources of pages.</returns>
    public string Write(PdfObjects objects) =>
        $"<< {string.Join(' ', _fonts.Values.Select(f => $"/{f.Name} {PdfSyntax.Reference(f.Write(objects))}"))} >>";
}
