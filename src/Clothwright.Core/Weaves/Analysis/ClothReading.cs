namespace Clothwright.Core.Weaves.Analysis;

/// <summary>How a drawdown is read where it ends.</summary>
public enum ClothReading
{
    /// <summary>As one repeat of a cloth without edges: what leaves on one side comes in on the other.</summary>
    Repeat,

    /// <summary>As a cloth cut at its edges: a float stops there.</summary>
    Cut,
}
