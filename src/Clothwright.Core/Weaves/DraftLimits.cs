namespace Clothwright.Core.Weaves;

/// <summary>How large a draft may be before it is refused: far above anything woven by hand, low enough never to fill the memory.</summary>
public static class DraftLimits
{
    /// <summary>Most shafts.</summary>
    public const int Shafts = ShaftSet.Highest;

    /// <summary>Most treadles.</summary>
    public const int Treadles = ShaftSet.Highest;

    /// <summary>Most ends.</summary>
    public const int Ends = 20_000;

    /// <summary>Most picks.</summary>
    public const int Picks = 100_000;

    /// <summary>Most crossings of ends and picks (ends × picks).</summary>
    public const long Crossings = 400_000_000;
}
