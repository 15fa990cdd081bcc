using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Results;

/// <summary>How many ends are wound, and what they are for.</summary>
public sealed record EndsPlan
{
    /// <summary>Ends that the wanted width asks for, before they are fitted to the repeat; all layers.</summary>
    public required Derived<Number> Wanted { get; init; }

    /// <summary>Ends in one repeat of the threading; all layers.</summary>
    public required int RepeatEnds { get; init; }

    /// <summary>Whole repeats across the warp.</summary>
    public required int Repeats { get; init; }

    /// <summary>Ends added so that the two edges of the pattern mirror each other, or left of a cut repeat.</summary>
    public required int BalancingEnds { get; init; }

    /// <summary>Selvedge ends, both sides together.</summary>
    public required int SelvedgeEnds { get; init; }

    /// <summary>Floating selvedges: 0 or 2.</summary>
    public required int FloatingSelvedges { get; init; }

    /// <summary>All ends to wind.</summary>
    public required Derived<Whole> Total { get; init; }

    /// <summary>Ends of the pattern itself: repeats and balancing ends.</summary>
    public int PatternEnds => Repeats * RepeatEnds + BalancingEnds;
}
