using System.Globalization;

namespace Clothwright.Core.Yarns;

/// <summary>Reads a number that a pattern found: digits or a word.</summary>
internal static class QuickNumber
{
    public static double Of(string text) => text.ToLowerInvariant() switch
    {
        "a" or "an" or "one" or "ein" or "eine" => 1,
        "two" or "zwei" => 2,
        "three" or "drei" => 3,
        "four" or "vier" => 4,
        "five" or "fünf" => 5,
        "six" or "sechs" => 6,
        "seven" => 7,
        "eight" => 8,
        "nine" => 9,
        "ten" => 10,
        "twelve" => 12,
        var digits => Math.Min(1e6, double.Parse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture)),
    };
}
