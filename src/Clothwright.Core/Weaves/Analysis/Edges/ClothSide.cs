namespace Clothwright.Core.Weaves.Analysis.Edges;

/// <summary>A side of the cloth, as it lies before the weaver; end 1 is at the left.</summary>
public enum ClothSide
{
    /// <summary>The side of end 1.</summary>
    Left,

    /// <summary>The side of the last end.</summary>
    Right,
}
