namespace Clothwright.Core.Cloths.Look;

/// <summary>A side of the cloth.</summary>
public enum Face
{
    /// <summary>The side that is up on the loom.</summary>
    Front,

    /// <summary>The other side, turned over left to right.</summary>
    Back,
}
