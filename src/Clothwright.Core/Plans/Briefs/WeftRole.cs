namespace Clothwright.Core.Plans.Briefs;

/// <summary>What a weft does in the cloth.</summary>
public enum WeftRole
{
    /// <summary>It makes the ground with the warp. A tabby pick between pattern picks is ground.</summary>
    Ground,

    /// <summary>It floats over a ground that would hold without it (a pattern or brocading weft).</summary>
    Supplementary,
}
