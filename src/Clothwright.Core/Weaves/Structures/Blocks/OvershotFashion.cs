namespace Clothwright.Core.Weaves.Structures;

/// <summary>How the blocks of overshot follow each other in the weft.</summary>
public enum OvershotFashion
{
    /// <summary>As drawn in: the blocks in the order of the threading; an unbroken diagonal (star).</summary>
    Star,

    /// <summary>The same picks with the blocks exchanged in pairs, A with B and C with D (rose).</summary>
    Rose,
}
