namespace Clothwright.Core.Colours.Stripes;

/// <summary>How an order of yarns comes about.</summary>
public enum StripeManner
{
    /// <summary>Each yarn passes into the next, thread by thread.</summary>
    Passage,

    /// <summary>Each stripe is as wide as the two before it together.</summary>
    Summing,

    /// <summary>All stripes are of one width.</summary>
    Even,

    /// <summary>Widths are drawn by lot, the same for the same seed.</summary>
    Lot,
}
