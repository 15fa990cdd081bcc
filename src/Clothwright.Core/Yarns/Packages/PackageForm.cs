namespace Clothwright.Core.Yarns;

/// <summary>How yarn is put up.</summary>
public enum PackageForm
{
    /// <summary>A wound ball.</summary>
    Ball,

    /// <summary>A reeled loop, tied; wind before use.</summary>
    Skein,

    /// <summary>A conical support.</summary>
    Cone,

    /// <summary>A cylindrical support.</summary>
    Tube,
}
