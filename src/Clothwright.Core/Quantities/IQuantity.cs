namespace Clothwright.Core.Quantities;

/// <summary>A number that knows what it measures. Every value is held in the base unit of its <see cref="QuantityKind"/>.</summary>
/// <typeparam name="TSelf">The quantity itself.</typeparam>
public interface IQuantity<TSelf>
    where TSelf : struct, IQuantity<TSelf>
{
    /// <summary>What this type measures.</summary>
    static abstract QuantityKind Kind { get; }

    /// <summary>The value in the base unit of <see cref="Kind"/>.</summary>
    double BaseValue { get; }

    /// <summary>Makes the quantity from a number in the base unit of <see cref="Kind"/>.</summary>
    /// <param name="baseValue">The number, in the base unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not one this quantity can have.</exception>
    static abstract TSelf FromBase(double baseValue);
}
