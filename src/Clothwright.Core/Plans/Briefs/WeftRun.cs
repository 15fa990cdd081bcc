namespace Clothwright.Core.Plans.Briefs;

/// <summary>Picks of one weft, one after the other.</summary>
/// <param name="YarnId">The yarn, by its id on the shelf.</param>
/// <param name="Picks">How many; above 0.</param>
public sealed record WeftRun(string YarnId, int Picks)
{
    /// <summary>Strands lying side by side in one pick; 1 or more.</summary>
    public int Strands { get; init; } = 1;

    /// <summary>The yarn it is clasped with, from the other side; null for an ordinary pick. Both then lie doubled.</summary>
    public string? ClaspedWith { get; init; }

    /// <summary>Share of the width, from the left, that the first yarn of a clasped pick covers on the average; between 0 and 1.</summary>
    public double ClaspShare { get; init; } = 0.5;
}
