namespace Clothwright.Core.Plans.Briefs;

/// <summary>What a piece is to be, as far as it changes lengths, advice or cautions.</summary>
public enum PieceKind
{
    /// <summary>A scarf.</summary>
    Scarf,

    /// <summary>A shawl.</summary>
    Shawl,

    /// <summary>A cowl, woven flat and joined in a ring.</summary>
    Cowl,

    /// <summary>A throw.</summary>
    Throw,

    /// <summary>A towel.</summary>
    Towel,

    /// <summary>A blanket.</summary>
    Blanket,

    /// <summary>A bag.</summary>
    Bag,

    /// <summary>A panel to be sewn into a garment.</summary>
    GarmentPanel,

    /// <summary>Plain yardage.</summary>
    Yardage,

    /// <summary>A sample, to be measured before and after washing.</summary>
    Sample,
}
