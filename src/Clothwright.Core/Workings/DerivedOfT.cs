using Clothwright.Core.Quantities;

namespace Clothwright.Core.Workings;

/// <summary>A number that can show its working: value, rule, inputs and spread.</summary>
/// <typeparam name="T">The quantity.</typeparam>
public sealed class Derived<T> : IDerived
    where T : struct, IQuantity<T>
{
    internal Derived(T value, Working working)
    {
        Value = value;
        Working = working;
    }

    /// <summary>The value: the best estimate.</summary>
    public T Value { get; }

    /// <inheritdoc />
    public Working Working { get; }

    /// <summary>The value that is not exceeded in 95 of 100 cases.</summary>
    public T Upper95 => T.FromBase(Working.Upper95);

    /// <summary>Standard deviation, in the base unit of the quantity.</summary>
    public double StandardDeviation => Working.Spread.StandardDeviation;

    /// <inheritdoc />
    public override string ToString() => Working.ToString();
}
