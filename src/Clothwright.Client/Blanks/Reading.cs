using System.Globalization;
using Clothwright.Core.Quantities;

namespace Clothwright.Client.Blanks;

/// <summary>Reads what was written into a blank; a bare number is taken in the unit in which she reads.</summary>
public static class Reading
{
    /// <summary>A length.</summary>
    public static Parsed<Length> Length(string text, string where, UnitStyle units) =>
        LengthText.Parse(IsBare(text) ? $"{text.Trim()} {(units == UnitStyle.Metric ? "cm" : "in")}" : text, where);

    /// <summary>Threads per width.</summary>
    public static Parsed<Sett> Sett(string text, string where, UnitStyle units) =>
        SettText.Parse(IsBare(text) ? $"{text.Trim()}{(units == UnitStyle.Metric ? "/cm" : "/in")}" : text, where);

    /// <summary>A whole number within limits.</summary>
    public static Parsed<int> Whole(string text, string where, int low, int high)
    {
        ArgumentNullException.ThrowIfNull(text);
        return int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= low && number <= high
            ? number
            : new InputProblem($"\"{text}\" is not a whole number from {low} to {high}.", where, $"Write digits only, for example {Math.Max(low, 1)}.");
    }

    /// <summary>A price.</summary>
    public static Parsed<Money> Price(string text, string where)
    {
        ArgumentNullException.ThrowIfNull(text);
        return double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double amount) && amount < 1e6
            ? Money.FromAmount(amount)
            : new InputProblem($"\"{text}\" is not a price.", where, "Write digits with a point before the cents, for example 14.50.");
    }

    private static bool IsBare(string text) =>
        double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _);
}
