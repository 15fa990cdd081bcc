using Clothwright.Core.Calibration;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Cloths;

/// <summary>What has to be known to describe a cloth in one state: on the loom, off it, or washed.</summary>
public sealed record ClothQuestion
{
    /// <summary>Yarns of the warp.</summary>
    public required ThreadSystem Warp { get; init; }

    /// <summary>Yarns of the weft.</summary>
    public required ThreadSystem Weft { get; init; }

    /// <summary>The weave, in whole repeats; of a cloth in layers that of one layer.</summary>
    public required Drawdown Weave { get; init; }

    /// <summary>Ends per width in this state, one layer.</summary>
    public required Derived<Sett> Ends { get; init; }

    /// <summary>Picks per length in this state, one layer.</summary>
    public required Derived<Sett> Picks { get; init; }

    /// <summary>How warp and weft share the bending.</summary>
    public CrimpSharing Sharing { get; init; } = CrimpSharing.EqualHeight;

    /// <summary>Warp crimp drawn from the cloth, for <see cref="CrimpSharing.MeasuredWarpCrimp"/>.</summary>
    public Derived<Ratio>? MeasuredWarpCrimp { get; init; }

    /// <summary>Width ÷ height of the warp's section, 1 (hard, round) to about 1.5 (soft).</summary>
    public Ratio WarpFlattening { get; init; } = Ratio.FromValue(1);

    /// <summary>Width ÷ height of the weft's section, 1 (hard, round) to about 1.5 (soft).</summary>
    public Ratio WeftFlattening { get; init; } = Ratio.FromValue(1);

    /// <summary>The warp's share of the bending as her swatches show it; takes the place of the rule.</summary>
    public LearnedValue? LearnedWarpShare { get; init; }

    /// <summary>Warp take-up as her swatches show it; takes the place of the geometry.</summary>
    public LearnedValue? LearnedWarpTakeUp { get; init; }

    /// <summary>Weft take-up as her swatches show it; takes the place of the geometry.</summary>
    public LearnedValue? LearnedWeftTakeUp { get; init; }

    /// <summary>A question about one warp yarn and one weft yarn at decided setts.</summary>
    /// <param name="warp">Warp yarn.</param>
    /// <param name="weft">Weft yarn.</param>
    /// <param name="weave">The weave.</param>
    /// <param name="ends">Ends per width.</param>
    /// <param name="picks">Picks per length.</param>
    public static ClothQuestion About(Yarn warp, Yarn weft, Drawdown weave, Sett ends, Sett picks) => new()
    {
        Warp = ThreadSystem.Of(warp),
        Weft = ThreadSystem.Of(weft),
        Weave = weave,
        Ends = Derived.Decision("ends", ends),
        Picks = Derived.Decision("picks", picks),
    };

    /// <summary>What is wrong with the question, or null.</summary>
    public InputProblem? Problem()
    {
        if (Warp.Problem("warp") is { } warp) return warp;
        if (Weft.Problem("weft") is { } weft) return weft;
        if (WarpFlattening.Value is < 1 or > 10) return Flattening("warp", WarpFlattening);
        if (WeftFlattening.Value is < 1 or > 10) return Flattening("weft", WeftFlattening);
        return Sharing == CrimpSharing.MeasuredWarpCrimp && MeasuredWarpCrimp is not { Value.Value: >= 0 }
            ? new InputProblem("The warp crimp is to be the measured one, and none is given.", "measuredWarpCrimp", "Give it, 0 or more, for example 8 %.")
            : null;
    }

    private static InputProblem Flattening(string system, Ratio value) => new(
        $"A {system} section {value.Value} times as wide as high cannot be used.", $"{system}Flattening", "Give 1 for a round thread, up to 10, for example 1.3.");
}
