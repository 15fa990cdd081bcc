namespace Clothwright.Core.Weaves.Structures;

/// <summary>A side of the cloth as the weaver sees it, end 1 at the left.</summary>
public enum ClothEdge
{
    /// <summary>The side of end 1.</summary>
    Left,

    /// <summary>The side of the last end.</summary>
    Right,
}
