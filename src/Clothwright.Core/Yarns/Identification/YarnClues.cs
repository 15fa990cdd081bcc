using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>What can be found out about a yarn that lost its label.</summary>
/// <param name="Length">A measured length, straight but not stretched; above 0.</param>
/// <param name="Mass">Mass of that length; above 0.</param>
public sealed record YarnClues(Length Length, Mass Mass)
{
    /// <summary>Wraps touching on a ruler, wound by hand; null if not measured.</summary>
    public Sett? Wraps { get; init; }

    /// <summary>Strands seen when the yarn is untwisted; null if not looked at.</summary>
    public int? Plies { get; init; }

    /// <summary>How an end burns; null if not tried.</summary>
    public BurnHint? Burns { get; init; }

    /// <summary>How it feels; null if not told.</summary>
    public FeelHint? Feels { get; init; }

    /// <summary>Smallest step of the scale; null: as the digits of <see cref="Mass"/> suggest.</summary>
    public Mass? ScaleStep { get; init; }
}
