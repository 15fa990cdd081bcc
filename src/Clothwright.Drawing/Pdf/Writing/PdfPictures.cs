using System.Globalization;
using Clothwright.Drawing.Faces;

namespace Clothwright.Drawing.Pdf.Writing;

/// <summary>The pictures of dots that a document uses (ISO 32000-1, section 8.9).</summary>
internal sealed class PdfPictures
{
    private readonly List<JpegPicture> _pictures = [];

    /// <summary>A picture, from now on used.</summary>
    /// <param name="picture">The picture.</param>
    /// <returns>Its name in the resources of pages.</returns>
    public string Use(JpegPicture picture)
    {
        int known = _pictures.FindIndex(p => ReferenceEquals(p, picture));
        if (known < 0)
        {
            known = _pictures.Count;
            _pictures.Add(picture);
        }

        return $"P{known.ToString(CultureInfo.InvariantCulture)}";
    }

    /// <summary>Writes the pictures.</summary>
    /// <param name="objects">Where to write.</param>
    /// <returns>The dictionary of pictures for the resources of pages.</returns>
    public string Write(PdfObjects objects) => $"<< {string.Join(' ', _pictures.Select((p, i) =>
        $"/P{i.ToString(CultureInfo.InvariantCulture)} {PdfSyntax.Reference(objects.AddOpenStream(
            string.Create(CultureInfo.InvariantCulture, $"/Type /XObject /Subtype /Image /Width {p.Width} /Height {p.Height} /ColorSpace /DeviceRGB /BitsPerComponent 8 /Filter /DCTDecode"), p.Bytes))}"))} >>";
}
