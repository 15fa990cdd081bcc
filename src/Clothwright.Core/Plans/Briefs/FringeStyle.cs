namespace Clothwright.Core.Plans.Briefs;

/// <summary>What becomes of the warp left unwoven at the ends of a piece.</summary>
public enum FringeStyle
{
    /// <summary>No fringe; the end is hemmed, sewn or joined.</summary>
    None,

    /// <summary>Left as it is behind a row of hemstitching.</summary>
    Loose,

    /// <summary>Two groups twisted one way, then together the other way, and knotted.</summary>
    Twisted,

    /// <summary>Groups tied in overhand knots.</summary>
    Knotted,
}
