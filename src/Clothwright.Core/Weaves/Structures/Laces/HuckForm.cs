namespace Clothwright.Core.Weaves.Structures;

/// <summary>Which floats stand on the ground of huck.</summary>
public enum HuckForm
{
    /// <summary>Weft float in one half unit, warp float in the other (huckaback).</summary>
    Huckaback,

    /// <summary>Weft floats in alternate half units both ways (huck lace).</summary>
    Lace,

    /// <summary>Warp floats in alternate half units both ways.</summary>
    Warp,
}
