using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>A cloth fitted to a loom, or why it cannot be and the smallest change that would do.</summary>
public sealed record LoomFitResult
{
    /// <summary>Whether the loom can weave it as it is.</summary>
    public required bool Feasible { get; init; }

    /// <summary>The draft on the fewest shafts and treadles found; null if it takes more than 64 shafts or treadles.</summary>
    /// <remarks>On a countermarche the tie-up shows what each treadle raises; <see cref="TieUp"/> also tells what it sinks.</remarks>
    public Draft? Draft { get; init; }

    /// <summary>Shafts needed.</summary>
    public required Derived<Whole> Shafts { get; init; }

    /// <summary>Treadles needed with as many feet as were allowed; 0 for levers.</summary>
    public required Derived<Whole> Treadles { get; init; }

    /// <summary>Treadles needed with one foot a pick: the different lifts.</summary>
    public required int DirectTreadles { get; init; }

    /// <summary>So many treadles are needed at least, as far as the search has shown.</summary>
    public required int TreadlesAtLeast { get; init; }

    /// <summary>Each treadle's tie, treadle 1 first; empty for levers.</summary>
    public ImmutableArray<TreadleTie> TieUp { get; init; } = [];

    /// <summary>Treadles pressed, pick by pick; empty for levers.</summary>
    public ImmutableArray<ShaftSet> Treadling { get; init; } = [];

    /// <summary>Shafts that are up, pick by pick: the lift plan for levers.</summary>
    public ImmutableArray<ShaftSet> LiftPlan { get; init; } = [];

    /// <summary>Whether fewer shafts, and then fewer treadles, are proved impossible.</summary>
    public required bool Optimal { get; init; }

    /// <summary>How the feet take turns; null for levers.</summary>
    public TreadleWalk? Walk { get; init; }

    /// <summary>Why it can or cannot be woven, and what to know, as sentences.</summary>
    public required ImmutableArray<string> Reasons { get; init; }

    /// <summary>The smallest change that would do, if the loom cannot weave it as it is; null if none is known.</summary>
    public DraftReduction? SmallestChange { get; init; }
}
