using Clothwright.Core.Weaves;
using Clothwright.Drawing.Figures;

namespace Clothwright.Drawing.Drafts;

/// <summary>Draws a draft as PNG.</summary>
public static class DraftPng
{
    private const int MostPixelsPerSide = 16384;

    /// <summary>Writes the draft on white paper.</summary>
    /// <param name="draft">The draft; with at least one end and one pick.</param>
    /// <param name="stream">Where to write; stays open.</param>
    /// <param name="colours">Colours of the threads; none if left out.</param>
    /// <param name="style">How it is drawn; as it stands at the loom if left out.</param>
    /// <param name="dotsPerInch">Dots per inch, above 0; fewer are used where a side would pass 16384 dots.</param>
    /// <exception cref="ArgumentException">The draft has no ends or no picks, or the resolution is not above 0.</exception>
    public static void Write(Draft draft, Stream stream, DraftColours? colours = null, DraftStyle? style = null, double dotsPerInch = 144)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dotsPerInch);
        Figure figure = DraftSheet.Whole(draft, colours ?? DraftColours.None, style ?? new DraftStyle());
        double most = MostPixelsPerSide * 72.0 / Math.Max(figure.Width, figure.Height);
        FigureCanvas.WritePng(figure, stream, Math.Min(dotsPerInch, most));
    }
}
