using System.Globalization;

namespace Clothwright.Core.Quantities;

/// <summary>Writes a quantity for a person, in metric or customary units, with as many digits as the work needs.</summary>
public static class QuantityText
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>Writes a number with its unit.</summary>
    /// <param name="kind">What the number measures.</param>
    /// <param name="baseValue">The number, in the base unit of <paramref name="kind"/>.</param>
    /// <param name="style">Metric or customary units.</param>
    /// <returns>For example <c>4.92 m</c>, <c>8.0 per cm</c>, <c>20.3 per inch</c>, <c>9.0 %</c>.</returns>
    public static string Format(QuantityKind kind, double baseValue, UnitStyle style) => (kind, style) switch
    {
        (QuantityKind.Whole, _) => baseValue.ToString("0", Plain),
        (QuantityKind.Number, _) => baseValue.ToString(Math.Abs(baseValue) < 100 ? "0.####" : "0.#", Plain),
        (QuantityKind.Ratio, _) => FormatRatio(baseValue),
        (QuantityKind.Length, UnitStyle.Metric) => FormatMetricLength(baseValue),
        (QuantityKind.Length, _) => FormatCustomaryLength(baseValue),
        (QuantityKind.Mass, UnitStyle.Metric) => $"{Digits(baseValue * 1000)} g",
        (QuantityKind.Mass, _) => $"{Digits(baseValue / Mass.KilogramsPerPound * 16)} oz",
        (QuantityKind.LinearDensity, UnitStyle.Metric) => $"{Digits(baseValue)} tex",
        (QuantityKind.LinearDensity, _) => $"{(LinearDensity.TexOfOneYardPerPound / baseValue).ToString("0", Plain)} yd/lb",
        (QuantityKind.Sett, UnitStyle.Metric) => $"{(baseValue / 100).ToString("0.0#", Plain)} per cm",
        (QuantityKind.Sett, _) => $"{(baseValue * Length.MetresPerInch).ToString("0.0", Plain)} per inch",
        (QuantityKind.ArealDensity, UnitStyle.Metric) => $"{baseValue.ToString("0", Plain)} g/m²",
        (QuantityKind.ArealDensity, _) => $"{(baseValue / ArealDensity.GramsPerSquareMetrePerOuncePerSquareYard).ToString("0.0#", Plain)} oz/yd²",
        (QuantityKind.Density, _) => $"{baseValue.ToString("0.00#", Plain)} g/cm³",
        (QuantityKind.Money, _) => baseValue.ToString("0.00", Plain),
        (QuantityKind.WorkTime, _) => $"{baseValue.ToString("0.0", Plain)} h",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "This kind of quantity has no written form."),
    };

    // A ratio below 2 that is not a whole number reads best as a percentage; factors read best plain.
    private static string FormatRatio(double value) =>
        Math.Abs(value) < 2 ? $"{(value * 100).ToString("0.0#", Plain)} %" : value.ToString("0.###", Plain);

    private static string FormatMetricLength(double metres) => metres switch
    {
        0 => "0 cm",
        < 0.005 => $"{(metres * 1000).ToString("0.00#", Plain)} mm",
        < 3 => $"{(metres * 100).ToString("0.0", Plain)} cm",
        < 100 => $"{metres.ToString("0.00", Plain)} m",
        _ => $"{metres.ToString("0", Plain)} m",
    };

    private static string FormatCustomaryLength(double metres)
    {
        double inches = metres / Length.MetresPerInch;
        return inches switch
        {
            0 => "0 in",
            < 0.2 => $"{inches.ToString("0.0000", Plain)} in",
            < 108 => $"{inches.ToString("0.0#", Plain)} in",
            < 3600 => $"{(metres / Length.MetresPerYard).ToString("0.00", Plain)} yd",
            _ => $"{(metres / Length.MetresPerYard).ToString("0", Plain)} yd",
        };
    }

    private static string Digits(double value) => Math.Abs(value) switch
    {
        >= 100 => value.ToString("0", Plain),
        >= 10 => value.ToString("0.0", Plain),
        _ => value.ToString("0.00", Plain),
    };
}
