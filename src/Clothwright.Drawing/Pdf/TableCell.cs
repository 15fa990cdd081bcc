using Clothwright.Drawing.Fonts;
using Clothwright.Drawing.Pdf.Tags;

namespace Clothwright.Drawing.Pdf;

/// <summary>A cell of a table, broken into lines.</summary>
/// <param name="Lines">Its lines.</param>
/// <param name="Style">Their style.</param>
/// <param name="X">Left edge in points from the left of the table.</param>
/// <param name="Owner">The part of the document that it is.</param>
internal sealed record TableCell(List<TextRun> Lines, TextStyle Style, float X, TagNode Owner)
{
    /// <summary>Edge against which the lines stand; null for the left edge.</summary>
    public float? Right { get; init; }

    /// <summary>Right end of a line to write on by hand; null if the cell is printed.</summary>
    public float? WriteTo { get; init; }
}
