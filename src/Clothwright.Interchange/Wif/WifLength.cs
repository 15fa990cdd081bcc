using Clothwright.Core.Quantities;

namespace Clothwright.Interchange.Wif;

/// <summary>Lengths as the standard writes them.</summary>
public static class WifLength
{
    /// <summary>Decipoints in one inch.</summary>
    public const double DecipointsPerInch = 720;

    /// <summary>A length from a number of the file.</summary>
    /// <param name="value">The number; finite, 0 or more.</param>
    /// <param name="units">Its unit; null means decipoints.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is below 0 or not finite.</exception>
    public static Length ToLength(double value, WifUnits? units) => units switch
    {
        WifUnits.Inches => Length.FromInches(value),
        WifUnits.Centimeters => Length.FromCentimetres(value),
        _ => Length.FromInches(value / DecipointsPerInch),
    };
}
