namespace Clothwright.Client.Drafting;

/// <summary>A part of the paper on which a draft is drawn.</summary>
public enum DeskPart
{
    /// <summary>Ends on shafts.</summary>
    Threading,

    /// <summary>Treadles tied to shafts.</summary>
    TieUp,

    /// <summary>Picks and the treadles they press, or the shafts they lift.</summary>
    Treads,

    /// <summary>The cloth, crossing by crossing.</summary>
    Cloth,

    /// <summary>Yarns of the ends.</summary>
    WarpColours,

    /// <summary>Yarns of the picks.</summary>
    WeftColours,
}
