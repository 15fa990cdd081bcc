namespace Clothwright.Core.Weaves.Structures;

/// <summary>Which threads cover the face.</summary>
public enum SatinFace
{
    /// <summary>The warp covers the face (satin).</summary>
    Warp,

    /// <summary>The weft covers the face (sateen).</summary>
    Weft,
}
