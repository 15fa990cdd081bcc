namespace Clothwright.Core.Plans.Briefs;

/// <summary>What each make asks of the loom.</summary>
public static class PieceMakes
{
    /// <summary>Layers of cloth woven at once.</summary>
    /// <param name="make">How the piece lies on the loom.</param>
    public static int Layers(this PieceMake make) => make == PieceMake.Flat ? 1 : 2;

    /// <summary>Width of the piece, as it is told, over the width of one layer on the loom.</summary>
    /// <param name="make">How the piece lies on the loom.</param>
    public static int WidthsPerLayer(this PieceMake make) => make == PieceMake.DoubleWidth ? 2 : 1;
}
