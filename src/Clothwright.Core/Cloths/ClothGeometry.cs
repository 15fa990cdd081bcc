using System.Collections.Immutable;
using Clothwright.Core.Cloths.Hand;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths;

/// <summary>A cloth in one state: how its threads bend, what they take up, how thick, heavy, closed and firm it is.</summary>
public sealed partial record ClothGeometry
{
    /// <summary>The question.</summary>
    public required ClothQuestion Question { get; init; }

    /// <summary>Changes of face, thread by thread.</summary>
    public required WeaveCounts Counts { get; init; }

    /// <summary>Mean diameter of the warp.</summary>
    public required Derived<Length> WarpDiameter { get; init; }

    /// <summary>Mean diameter of the weft.</summary>
    public required Derived<Length> WeftDiameter { get; init; }

    /// <summary>Crimp height of the warp as a share of both systems' thickness; the weft has the rest.</summary>
    public required Derived<Ratio> WarpShare { get; init; }

    /// <summary>Warp crimp, on cloth length.</summary>
    public required Derived<Ratio> WarpCrimp { get; init; }

    /// <summary>Weft crimp, on cloth width.</summary>
    public required Derived<Ratio> WeftCrimp { get; init; }

    /// <summary>Warp take-up, on yarn length: crimp ÷ (1 + crimp), or what swatches taught.</summary>
    public required Derived<Ratio> WarpTakeUp { get; init; }

    /// <summary>Weft take-up, on yarn length: crimp ÷ (1 + crimp), or what swatches taught.</summary>
    public required Derived<Ratio> WeftTakeUp { get; init; }

    /// <summary>Warp take-up by Taylor's rule of the cotton mills, to compare.</summary>
    public Derived<Ratio> WarpTakeUpByTaylor => TaylorTakeUp.Of(Question.Picks, Question.Weft.MeanLinearDensity(), Counts.MeanPickFloat);

    /// <summary>Thickness without pressure.</summary>
    public required Derived<Length> Thickness { get; init; }

    /// <summary>Mass per area.</summary>
    public required Derived<ArealDensity> Mass { get; init; }

    /// <summary>Share of the width that ends cover.</summary>
    public required Derived<Ratio> WarpCover { get; init; }

    /// <summary>Share of the length that picks cover.</summary>
    public required Derived<Ratio> WeftCover { get; init; }

    /// <summary>Share of the area that is not hole.</summary>
    public required Derived<Ratio> Cover { get; init; }

    /// <summary>How far both spacings could shrink together before the cloth jams: 1 is jammed, 0.5 half as close as can be.</summary>
    public required Derived<Ratio> Tightness { get; init; }

    /// <summary>Whether the setts are closer than these yarns can lie.</summary>
    public required bool IsJammed { get; init; }

    /// <summary>Changes of face of end and pick at each crossing: 2 for plain weave, less the longer the floats.</summary>
    public double CrossingOverFirmness => Counts.CrossingOverFirmness;

    /// <summary>Crimp of each end, from its own changes of face; as a fraction of cloth length.</summary>
    public required ImmutableArray<double> CrimpPerEnd { get; init; }

    /// <summary>Crimp of each pick, from its own changes of face; as a fraction of cloth width.</summary>
    public required ImmutableArray<double> CrimpPerPick { get; init; }

    /// <summary>How it feels and falls, in words; reckoned when asked for.</summary>
    public ClothHand Hand => ClothHand.Of(this);
}
