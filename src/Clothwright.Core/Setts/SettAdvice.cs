using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Diameters;
using Clothwright.Core.Setts.Limits;
using Clothwright.Core.Setts.Reeds;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts;

/// <summary>How close to set a warp and to beat a weft: limits by method, the sett for the purpose, and the reeds that give it.</summary>
public sealed partial record SettAdvice
{
    /// <summary>The question, about one layer when the weave fell into several.</summary>
    public required SettQuestion Question { get; init; }

    /// <summary>Changes of face, thread by thread.</summary>
    public required WeaveCounts Counts { get; init; }

    /// <summary>Mean diameter of the warp.</summary>
    public required Derived<Length> WarpDiameter { get; init; }

    /// <summary>Mean diameter of the weft.</summary>
    public required Derived<Length> WeftDiameter { get; init; }

    /// <summary>The diameter of the first warp yarn by each rule.</summary>
    public required ImmutableArray<DiameterReading> WarpDiameters { get; init; }

    /// <summary>Wraps of the warp that she would count by hand.</summary>
    public required Derived<Sett> WarpWrapsByHand { get; init; }

    /// <summary>Ends that touch, side by side: geometric wraps of the warp.</summary>
    public required Derived<Sett> WarpTouching { get; init; }

    /// <summary>The limits by method, the handweaver's maximum first.</summary>
    public required ImmutableArray<SettLimit> Limits { get; init; }

    /// <summary>The handweaver's maximum: ends by Ashenhurst, ends plus intersections.</summary>
    public Derived<Sett> MaximumEnds => Limits[0].Ends;

    /// <summary>The handweaver's maximum: picks by Ashenhurst, ends plus intersections.</summary>
    public Derived<Sett> MaximumPicks => Limits[0].Picks;

    /// <summary>The pick that takes most room between the ends.</summary>
    public required TightLine TightestPick { get; init; }

    /// <summary>The end that takes most room between the picks.</summary>
    public required TightLine TightestEnd { get; init; }

    /// <summary>The sett to use, in one layer.</summary>
    public required Derived<Sett> Ends { get; init; }

    /// <summary>Setts that serve the purpose, in one layer: the customary shares, widened by how sure the diameter is.</summary>
    public required SettRange EndsRange { get; init; }

    /// <summary>The picks to beat, in one layer.</summary>
    public required Derived<Sett> Picks { get; init; }

    /// <summary>Picks that serve the purpose, in one layer.</summary>
    public required SettRange PicksRange { get; init; }

    /// <summary>The sett on the loom, all layers together.</summary>
    public required Derived<Sett> EndsOnLoom { get; init; }

    /// <summary>Reeds and rigid heddles that give the sett, nearest first.</summary>
    public required ImmutableArray<ReedFit> Reeds { get; init; }

    /// <summary>Advice and warnings, in sentences.</summary>
    public required ImmutableArray<string> Notes { get; init; }

    /// <summary>The picks beside another sett than the advised one: the same share of their maximum as the ends have of theirs.</summary>
    /// <param name="ends">Ends in one layer.</param>
    public Derived<Sett> PicksBeside(Derived<Sett> ends) => Derived.From<Sett>(
        "picks",
        new Rule("picks as close as the ends", "advised picks × ends ÷ advised ends", Source.Derivation),
        Picks,
        ends,
        Ends,
        (picks, chosen, advised) => picks * chosen / advised);
}
