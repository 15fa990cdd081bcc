namespace Clothwright.Core.Weaves.Analysis.Threads;

/// <summary>Ways in which a cloth without edges looks the same; places may shift.</summary>
[Flags]
public enum ClothSymmetries
{
    /// <summary>None but the repeat itself.</summary>
    None = 0,

    /// <summary>The same in a mirror set along the warp: left and right exchanged.</summary>
    SideToSide = 1,

    /// <summary>The same in a mirror set along the weft: first and last pick exchanged.</summary>
    EndToEnd = 2,

    /// <summary>The same when turned half round.</summary>
    HalfTurn = 4,

    /// <summary>The same when turned over: both faces look alike, hand and all.</summary>
    FacesAlike = 8,

    /// <summary>Warp and weft on top exchanged give the same figure: the back shows through as the face.</summary>
    Counterchange = 16,

    /// <summary>The same when turned a quarter round.</summary>
    QuarterTurn = 32,

    /// <summary>Warp weaves as weft does: the turned draft gives the same cloth.</summary>
    WarpAsWeft = 64,
}
