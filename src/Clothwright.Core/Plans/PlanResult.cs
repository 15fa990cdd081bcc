using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Setts.Reeds;
using Clothwright.Core.Weaves;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans;

/// <summary>Everything that follows from the decisions: what to wind, to thread, to weave, and what it will come to.</summary>
public sealed partial record PlanResult
{
    /// <summary>The decisions.</summary>
    public required PlanRequest Request { get; init; }

    /// <summary>The loom.</summary>
    public required Loom Loom { get; init; }

    /// <summary>One repeat of the draft as threaded and tied on the loom, all layers.</summary>
    public required Draft LoomDraft { get; init; }

    /// <summary>Ends and what they are for.</summary>
    public required EndsPlan Ends { get; init; }

    /// <summary>Yarns across the whole warp from the left, floating selvedges included.</summary>
    public required ImmutableArray<ThreadRun> WarpRuns { get; init; }

    /// <summary>Reed or rigid heddles and sley; null when the bench holds none that the loom can use.</summary>
    public required ReedFit? Reed { get; init; }

    /// <summary>The advice on sett that was followed or set aside.</summary>
    public required SettAdvice SettAdvice { get; init; }

    /// <summary>Ends per width in the reed, all layers.</summary>
    public required Derived<Sett> Sett { get; init; }

    /// <summary>Width of the warp in the reed.</summary>
    public required Derived<Length> ReedWidth { get; init; }

    /// <summary>The warp from front to back.</summary>
    public required ImmutableArray<WarpSection> Sections { get; init; }

    /// <summary>Length of warp to wind.</summary>
    public required Derived<Length> WarpLength { get; init; }

    /// <summary>Warp taken up by weaving, all pieces together, off tension.</summary>
    public required Derived<Ratio> WarpTakeUp { get; init; }

    /// <summary>Weft taken up by weaving, all pieces together.</summary>
    public required Derived<Ratio> WeftTakeUp { get; init; }

    /// <summary>Picks of all pieces.</summary>
    public required Derived<Whole> Picks { get; init; }

    /// <summary>The pieces, in the order of the request.</summary>
    public required ImmutableArray<PiecePlan> Pieces { get; init; }

    /// <summary>Yarn by yarn, in the order of the shelf; yarns not used are left out.</summary>
    public required ImmutableArray<YarnNeed> Yarns { get; init; }

    /// <summary>Mass per area of the finished cloth, one layer, all pieces together.</summary>
    public required Derived<ArealDensity> MassPerArea { get; init; }

    /// <summary>Mass of all yarn used.</summary>
    public required Derived<Mass> Mass { get; init; }

    /// <summary>Hours at work.</summary>
    public required WorkEstimate Work { get; init; }

    /// <summary>Price of the yarn used; null unless every yarn used has a price.</summary>
    public required Derived<Money>? Cost { get; init; }

    /// <summary>Price of the packages to buy; null unless every yarn to be bought has a price.</summary>
    public required Derived<Money>? Purchase { get; init; }

    /// <summary>What goes against the trade or the material, with advice.</summary>
    public required ImmutableArray<PlanWarning> Warnings { get; init; }

    /// <summary>Where the work could hurt someone.</summary>
    public required ImmutableArray<Caution> Cautions { get; init; }

    /// <summary>Every figure by name.</summary>
    public FigureBook Figures { get; internal init; } = FigureBook.Empty;
}
