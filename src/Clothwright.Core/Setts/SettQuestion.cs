using System.Collections.Immutable;
using Clothwright.Core.Calibration;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Setts;

/// <summary>What has to be known to advise on a sett.</summary>
public sealed record SettQuestion
{
    /// <summary>Yarns of the warp.</summary>
    public required ThreadSystem Warp { get; init; }

    /// <summary>Yarns of the weft.</summary>
    public required ThreadSystem Weft { get; init; }

    /// <summary>The weave, in whole repeats; of a cloth in layers that of one layer. A weave that falls into equal layers is taken apart.</summary>
    public required Drawdown Weave { get; init; }

    /// <summary>What the cloth is for.</summary>
    public ClothPurpose Purpose { get; init; } = ClothPurpose.Everyday;

    /// <summary>Layers woven at once, one above the other: 2 for double width or a tube.</summary>
    public int Layers { get; init; } = 1;

    /// <summary>Width of the cloth, if known: wide cloth is set more open.</summary>
    public Length? Width { get; init; }

    /// <summary>Whether it will be felted by hand, which wants room.</summary>
    public bool ToBeFulled { get; init; }

    /// <summary>Reeds she owns.</summary>
    public ImmutableArray<Reed> Reeds { get; init; } = [];

    /// <summary>Rigid heddles she owns.</summary>
    public ImmutableArray<RigidHeddle> Heddles { get; init; } = [];

    /// <summary>Rigid heddles that her frame carries at once.</summary>
    public int HeddlesAtOnce { get; init; } = LoomChecks.MostRigidHeddles;

    /// <summary>The share of the maximum at which her own cloths of this purpose served; takes the place of the charts.</summary>
    public LearnedValue? LearnedShare { get; init; }

    /// <summary>A question about one warp yarn and one weft yarn.</summary>
    /// <param name="warp">Warp yarn.</param>
    /// <param name="weft">Weft yarn; the warp yarn if left out.</param>
    /// <param name="weave">The weave.</param>
    /// <param name="purpose">What the cloth is for.</param>
    public static SettQuestion About(Yarn warp, Drawdown weave, ClothPurpose purpose, Yarn? weft = null) => new()
    {
        Warp = ThreadSystem.Of(warp),
        Weft = ThreadSystem.Of(weft ?? warp),
        Weave = weave,
        Purpose = purpose,
    };

    /// <summary>What is wrong with the question, or null.</summary>
    public InputProblem? Problem()
    {
        if (Warp.Problem("warp") is { } warp) return warp;
        if (Weft.Problem("weft") is { } weft) return weft;
        return Layers is >= 1 and <= 4
            ? null
            : new InputProblem($"A cloth of {Layers} layers cannot be set.", "layers", "Give 1 for a single cloth or 2 for double width, at most 4.");
    }
}
