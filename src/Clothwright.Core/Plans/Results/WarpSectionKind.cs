namespace Clothwright.Core.Plans.Results;

/// <summary>What becomes of a stretch of warp.</summary>
public enum WarpSectionKind
{
    /// <summary>Knots at the front beam and warp out of reach of the reed behind.</summary>
    LoomWaste,

    /// <summary>Woven with waste weft to spread the warp.</summary>
    Header,

    /// <summary>A sample.</summary>
    Sample,

    /// <summary>A fringe.</summary>
    Fringe,

    /// <summary>Woven cloth of a piece.</summary>
    Cloth,

    /// <summary>Left between pieces.</summary>
    Gap,
}
