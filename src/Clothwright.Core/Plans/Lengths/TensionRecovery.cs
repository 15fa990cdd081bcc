using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Lengths;

/// <summary>What a cloth gives back when it leaves the loom: the warp stretches under tension and lies straighter than it will at rest.</summary>
public static class TensionRecovery
{
    private static readonly Rule StraightRule = new(
        "take-up under tension", "take-up at rest × crimp geometry's take-up on the loom ÷ its take-up at rest", Source.Derivation);

    /// <summary>Length on the loom that leaves a wanted length at rest.</summary>
    public static Rule Rule { get; } = new(
        "recovery off tension",
        "length under tension = length at rest ÷ (1 − take-up at rest) × (1 − take-up under tension) × (1 + stretch under tension)",
        Source.Derivation);

    /// <summary>How far a warp under weaving tension is stretched.</summary>
    public static Derived<Ratio> Stretch { get; } = Derived.FromRange(
        "stretch of the warp under tension", Ratio.Zero, Ratio.FromPercent(4), Source.CommonPractice);

    /// <summary>The part of the take-up that is there while the warp is stretched.</summary>
    /// <param name="atRest">Take-up off the loom, reckoned or measured.</param>
    /// <param name="geometryOnLoom">Take-up on the loom by geometry.</param>
    /// <param name="geometryAtRest">Take-up off the loom by geometry.</param>
    public static Derived<Ratio> TakeUp(Derived<Ratio> atRest, Derived<Ratio> geometryOnLoom, Derived<Ratio> geometryAtRest) => Derived.From<Ratio>(
        "warp take-up under tension",
        StraightRule,
        atRest,
        geometryOnLoom,
        geometryAtRest,
        (rest, onLoom, offLoom) => offLoom > 0 ? rest * Math.Min(1, onLoom / offLoom) : 0);

    /// <summary>Length to weave, measured on the loom under tension.</summary>
    /// <param name="atRest">Length off the loom.</param>
    /// <param name="takeUpAtRest">Take-up off the loom.</param>
    /// <param name="takeUpUnderTension">Take-up on the loom; not more than at rest.</param>
    public static Derived<Length> UnderTension(Derived<Length> atRest, Derived<Ratio> takeUpAtRest, Derived<Ratio> takeUpUnderTension) =>
        Derived.From<Length>(
            "length to weave, under tension",
            Rule,
            [atRest, takeUpAtRest, takeUpUnderTension, Stretch],
            v => v[0] / (1 - v[1]) * (1 - v[2]) * (1 + v[3]));
}
