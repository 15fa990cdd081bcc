namespace Clothwright.Interchange.Http;

/// <summary>What a warp is wound on.</summary>
public enum WarpingToolKind
{
    /// <summary>A board with pegs.</summary>
    Board,

    /// <summary>An upright or lying mill that turns.</summary>
    Mill,

    /// <summary>Pegs clamped to a table; for a warp wound straight onto the loom.</summary>
    Pegs,

    /// <summary>A beam that is wound in sections.</summary>
    SectionalBeam,
}
