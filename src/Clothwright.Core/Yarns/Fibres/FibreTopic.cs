namespace Clothwright.Core.Yarns;

/// <summary>In what yarns of equal count differ by their fibre.</summary>
public enum FibreTopic
{
    /// <summary>Thickness of the yarn, from density and packing.</summary>
    Diameter,

    /// <summary>Stretch at break.</summary>
    Stretch,

    /// <summary>Shrinkage in the first washing.</summary>
    WashingShrinkage,

    /// <summary>Strength when wet.</summary>
    WetStrength,

    /// <summary>Moisture it holds.</summary>
    Regain,

    /// <summary>Whether it felts.</summary>
    Felting,
}
