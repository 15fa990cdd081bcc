using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Lengths;

/// <summary>Draw-in: the width lost between the reed and the cloth off the loom.</summary>
public static class DrawIn
{
    /// <summary>Width in the reed that a width of cloth needs.</summary>
    public static Rule ReedRule { get; } = new("draw-in", "width in the reed = width off the loom ÷ (1 − draw-in)", Source.Derivation);

    /// <summary>Width of cloth that a width in the reed gives.</summary>
    public static Rule ClothRule { get; } = new("draw-in", "width off the loom = width in the reed × (1 − draw-in)", Source.Derivation);

    /// <summary>Draw-in from the weft's waves and its pull.</summary>
    public static Rule Rule { get; } = new(
        "draw-in from the weft", "draw-in = 1 − (1 − weft take-up) × (1 − pull of the weft)", Source.Derivation);

    /// <summary>Width lost because the weft is laid in shorter than the warp is wide, beyond its waves.</summary>
    public static Derived<Ratio> Pull { get; } = Derived.FromRange(
        "pull of the weft at the selvedges", Ratio.Zero, Ratio.FromPercent(5), Source.CommonPractice);

    /// <summary>Draw-in from the weft's take-up.</summary>
    /// <param name="weftTakeUp">Share of the weft's length that goes into its waves.</param>
    public static Derived<Ratio> From(Derived<Ratio> weftTakeUp) =>
        Derived.From<Ratio>("draw-in", Rule, weftTakeUp, Pull, (t, pull) => 1 - (1 - t) * (1 - pull));

    /// <summary>Width in the reed that a width of cloth needs.</summary>
    /// <param name="cloth">Width off the loom.</param>
    /// <param name="drawIn">Share of the width in the reed; below 1.</param>
    public static Derived<Length> ReedWidthFor(Derived<Length> cloth, Derived<Ratio> drawIn) =>
        Derived.From<Length>("width wanted in the reed", ReedRule, cloth, drawIn, (width, w) => width / (1 - w));

    /// <summary>Width of cloth that a width in the reed gives.</summary>
    /// <param name="reed">Width in the reed.</param>
    /// <param name="drawIn">Share of the width in the reed; below 1.</param>
    public static Derived<Length> ClothWidthOf(Derived<Length> reed, Derived<Ratio> drawIn) =>
        Derived.From<Length>("width off the loom", ClothRule, reed, drawIn, (width, w) => width * (1 - w));
}
