namespace Clothwright.Core.Cloths;

/// <summary>How the bending is shared between warp and weft: spacings and diameters alone leave it open.</summary>
public enum CrimpSharing
{
    /// <summary>Both bend equally far: a washed, relaxed cloth.</summary>
    EqualHeight,

    /// <summary>Both crimp by the same fraction.</summary>
    EqualCrimp,

    /// <summary>Both press on each other with one force; the stiffer or shorter span bends less.</summary>
    BendingBalance,

    /// <summary>The warp crimp was measured on a thread drawn from the cloth.</summary>
    MeasuredWarpCrimp,

    /// <summary>On the loom: the stretched warp bends about a third of the way.</summary>
    OnLoom,
}
