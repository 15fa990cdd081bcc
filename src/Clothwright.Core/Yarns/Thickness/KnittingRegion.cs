namespace Clothwright.Core.Yarns;

/// <summary>Where a name of a hand-knitting thickness is used.</summary>
public enum KnittingRegion
{
    /// <summary>United States and Canada.</summary>
    UnitedStates,

    /// <summary>United Kingdom and Ireland.</summary>
    UnitedKingdom,

    /// <summary>Australia and New Zealand.</summary>
    Australia,
}
