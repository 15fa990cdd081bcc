namespace Clothwright.Core.Yarns;

/// <summary>Fibres that burn and feel alike.</summary>
public enum FibreFamily
{
    /// <summary>Wool and like hair: protein.</summary>
    Wool,

    /// <summary>Silk: protein.</summary>
    Silk,

    /// <summary>Cotton: cellulose.</summary>
    Cotton,

    /// <summary>Linen, hemp, ramie: cellulose of stems.</summary>
    Bast,

    /// <summary>Viscose, lyocell, modal: cellulose spun anew.</summary>
    Regenerated,

    /// <summary>Acetate: melts as it burns.</summary>
    Acetate,

    /// <summary>Nylon, polyester, acrylic: melt to a hard bead.</summary>
    Synthetic,

    /// <summary>Film with a metal layer.</summary>
    Film,
}
