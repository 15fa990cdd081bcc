using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Lengths;

/// <summary>Shrinkage in finishing, always a share of the length before: to find the length before, divide; adding the share back falls short.</summary>
public static class FinishingShrinkage
{
    private static readonly Source Chain = Source.Published("weaving teachers' notes on shrinkage: divide by 1 less the shrinkage, never add it back");

    /// <summary>The length or width before washing that leaves a wanted one.</summary>
    public static Rule BeforeRule { get; } = new("shrinkage in finishing", "before washing = after washing ÷ (1 − shrinkage)", Chain);

    /// <summary>What is left of a length or width after washing.</summary>
    public static Rule AfterRule { get; } = new("shrinkage in finishing", "after washing = before washing × (1 − shrinkage)", Chain);

    /// <summary>Shrinkage that a washed sample shows.</summary>
    public static Rule SampleRule { get; } = new("shrinkage of a sample", "shrinkage = (before washing − after washing) ÷ before washing", Chain);

    /// <summary>Shrinkage that a washed sample shows.</summary>
    /// <param name="label">What it is called.</param>
    /// <param name="before">Length or width before washing; above 0.</param>
    /// <param name="after">The same after washing.</param>
    public static Derived<Ratio> OfSample(string label, Derived<Length> before, Derived<Length> after) =>
        Derived.From<Ratio>(label, SampleRule, before, after, (was, remains) => (was - remains) / was);

    /// <summary>The length or width before washing.</summary>
    /// <param name="label">What it is called.</param>
    /// <param name="after">Wanted after washing.</param>
    /// <param name="shrinkage">Share lost of the length before; below 1.</param>
    public static Derived<Length> Before(string label, Derived<Length> after, Derived<Ratio> shrinkage) =>
        Derived.From<Length>(label, BeforeRule, after, shrinkage, (wanted, s) => wanted / (1 - s));

    /// <summary>The length or width after washing.</summary>
    /// <param name="label">What it is called.</param>
    /// <param name="before">Before washing.</param>
    /// <param name="shrinkage">Share lost of the length before; below 1.</param>
    public static Derived<Length> After(string label, Derived<Length> before, Derived<Ratio> shrinkage) =>
        Derived.From<Length>(label, AfterRule, before, shrinkage, (length, s) => length * (1 - s));
}
