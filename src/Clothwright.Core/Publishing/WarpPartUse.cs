namespace Clothwright.Core.Publishing;

/// <summary>What a part of the warp is used for.</summary>
public enum WarpPartUse
{
    /// <summary>Woven, and part of a piece.</summary>
    Piece,

    /// <summary>Woven first to try the sett and the beat.</summary>
    Sample,

    /// <summary>Left unwoven for fringe or as space between pieces.</summary>
    Fringe,

    /// <summary>Woven to spread the warp or to hold an edge, and cut off or folded.</summary>
    Header,

    /// <summary>Tied on in front or left behind: cannot be woven.</summary>
    LoomWaste,
}
