using System.Collections.Immutable;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Photographs;

/// <summary>One set of threads counted from a photograph.</summary>
public sealed record ThreadSetCount
{
    /// <summary>Threads for a width of cloth, with its working.</summary>
    public required Derived<Sett> Sett { get; init; }

    /// <summary>How far it can be trusted.</summary>
    public required Certainty Certainty { get; init; }

    /// <summary>How far the direction in which the threads are counted is turned from the picture's axis, degrees, clockwise.</summary>
    public required double AngleDegrees { get; init; }

    /// <summary>Counts of the strips: how far the highest is above the lowest, as a share of the count.</summary>
    public required double SpreadFraction { get; init; }

    /// <summary>How evenly gaps come, 0 to 1.</summary>
    public required double Strength { get; init; }

    /// <summary>How many threads the square shows.</summary>
    public required int ThreadsSeen { get; init; }

    /// <summary>How far the next best count is behind, 0 (alike) to 1 (none comes near).</summary>
    public required double Margin { get; init; }

    /// <summary>What is left open.</summary>
    public required ImmutableArray<CountQuestion> Questions { get; init; }

    /// <summary>Places of the gaps in the photograph, strip by strip, for a grid drawn over it.</summary>
    public required ImmutableArray<ImmutableArray<PhotoPoint>> Gaps { get; init; }
}
