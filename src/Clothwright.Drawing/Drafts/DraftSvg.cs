using System.Text;
using Clothwright.Core.Weaves;
using Clothwright.Drawing.Figures;

namespace Clothwright.Drawing.Drafts;

/// <summary>Writes a draft as SVG: threading, tie-up, treadling or lift plan, drawdown, colours and repeats.</summary>
/// <remarks>Each kind of cell has its class: <c>warp</c>, <c>weft</c>, <c>threading</c>, <c>tie-up</c>, <c>treadling</c>, <c>lift</c>. Text stays text.</remarks>
public static class DraftSvg
{
    /// <summary>Writes the draft as UTF-8.</summary>
    /// <param name="draft">The draft; with at least one end and one pick.</param>
    /// <param name="stream">Where to write; stays open.</param>
    /// <param name="colours">Colours of the threads; none if left out.</param>
    /// <param name="style">How it is drawn; as it stands at the loom if left out.</param>
    /// <exception cref="ArgumentException">The draft has no ends or no picks.</exception>
    public static void Write(Draft draft, Stream stream, DraftColours? colours = null, DraftStyle? style = null)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(stream);
        FigureSvg.Write(DraftSheet.Whole(draft, colours ?? DraftColours.None, style ?? new DraftStyle()), stream);
    }

    /// <summary>The draft as SVG text.</summary>
    /// <inheritdoc cref="Write" />
    public static string ToString(Draft draft, DraftColours? colours = null, DraftStyle? style = null)
    {
        using var stream = new MemoryStream();
        Write(draft, stream, colours, style);
        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }
}
