namespace Clothwright.Core.Cloths.Look.Light;

/// <summary>Which way a thread runs in the cloth.</summary>
public enum ThreadDirection
{
    /// <summary>Along the cloth.</summary>
    Warp,

    /// <summary>Across the cloth.</summary>
    Weft,
}
