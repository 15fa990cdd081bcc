namespace Clothwright.Core.Yarns;

/// <summary>What the number of a count is the number of.</summary>
public enum CountBasis
{
    /// <summary>One single strand.</summary>
    Singles,

    /// <summary>The finished yarn, all strands together.</summary>
    Resultant,
}
