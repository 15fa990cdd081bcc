namespace Clothwright.Core.Setts.Limits;

/// <summary>The families of weave for which sett constants are published.</summary>
public enum WeaveFamily
{
    /// <summary>Plain weave.</summary>
    Plain,

    /// <summary>Twill: every pick is the one before it, moved by one end.</summary>
    Twill,

    /// <summary>Satin: single binding points that do not touch, moved by more than one end.</summary>
    Satin,

    /// <summary>Hopsack or basket: plain weave of groups of ends and picks.</summary>
    Hopsack,

    /// <summary>Warp rib: plain weave with several picks in one shed; the ends float.</summary>
    WarpRib,

    /// <summary>Weft rib: plain weave with groups of ends; the picks float.</summary>
    WeftRib,
}
