using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Lengths;

/// <summary>Take-up: the share of a yarn's own length that goes into its waves between the threads it crosses.</summary>
public static class TakeUp
{
    /// <summary>Yarn that a length of cloth uses.</summary>
    public static Rule YarnRule { get; } = new("take-up", "length of yarn = length of cloth off tension ÷ (1 − take-up)", Source.Derivation);

    /// <summary>Take-up from crimp.</summary>
    public static Rule FromCrimpRule { get; } = new("take-up from crimp", "take-up = crimp ÷ (1 + crimp); crimp is counted on the cloth, take-up on the yarn", Source.Derivation);

    /// <summary>Yarn that a length of cloth uses.</summary>
    /// <param name="label">What it is called.</param>
    /// <param name="cloth">Length of cloth off tension.</param>
    /// <param name="takeUp">Share of the yarn's length; below 1.</param>
    public static Derived<Length> YarnFor(string label, Derived<Length> cloth, Derived<Ratio> takeUp) =>
        Derived.From<Length>(label, YarnRule, cloth, takeUp, (length, t) => length / (1 - t));

    /// <summary>Take-up from crimp.</summary>
    /// <param name="label">What it is called.</param>
    /// <param name="crimp">Yarn length over cloth length, less 1; above −1.</param>
    public static Derived<Ratio> FromCrimp(string label, Derived<Ratio> crimp) =>
        Derived.From<Ratio>(label, FromCrimpRule, crimp, c => c / (1 + c));
}
