using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Lengths;

/// <summary>What a cloth gives back when it leaves the loom: the warp stretches under tension and lies straighter than it will at rest.</summary>
public static class TensionRecovery
{
    /// <summary>Length on the loom that leaves a wanted length at rest.</summary>
    public static Rule Rule { get; } = new(
        "recovery off tension",
        "length under tension = length at rest ÷ (1 − take-up at rest) × (1 − take-up under tension) × (1 + stretch under tension)",
        Source.Derivation);

    /// <summary>How far a warp under weaving tension is stretched.</summary>
    public static Derived<Ratio> Stretch { get; } = Derived.FromRange(
        "stretch of the warp under tension", Ratio.Zero, Ratio.FromPercent(4), Source.CommonPractice);

    /// <summary>Length to weave, measured on the loom under tension.</summary>
    /// <param name="label">What it is called.</param>
    /// <param name="atRest">Length off the loom.</param>
    /// <param name="takeUpAtRest">Take-up off the loom.</param>
    /// <param name="takeUpUnderTension">Take-up on the loom; not more than at rest.</param>
    public static Derived<Length> UnderTension(
        string label, Derived<Length> atRest, Derived<Ratio> takeUpAtRest, Derived<Ratio> takeUpUnderTension) =>
        Derived.From<Length>(
            label,
            Rule,
            [atRest, takeUpAtRest, takeUpUnderTension, Stretch],
            v => v[0] / (1 - v[1]) * (1 - v[2]) * (1 + v[3]));
}
