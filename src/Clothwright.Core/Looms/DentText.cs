using System.Globalization;
using System.Text.RegularExpressions;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Looms;

/// <summary>Reads how close the spaces of a reed or heddle are, from the ways weavers write it.</summary>
internal static partial class DentText
{
    private const string Mend = "Write dents per inch, dents per 10 cm, or a number with its system, for example \"10-dent\", \"40/10\", \"60 stockport\".";

    internal static Parsed<Sett> Parse(string text, string where)
    {
        ArgumentNullException.ThrowIfNull(text);
        Match match = Written().Match(text);
        if (!match.Success
            || !double.TryParse(match.Groups["number"].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number)
            || !double.IsFinite(number))
        {
            return new InputProblem($"\"{text}\" does not say how close the dents are.", where, Mend) { Text = text, Position = 0 };
        }

        if (number <= 0) return new InputProblem($"\"{text}\" has no dents.", where, Mend) { Text = text, Position = match.Groups["number"].Index };

        string unit = match.Groups["unit"].Value.Trim().ToLowerInvariant();
        switch (unit)
        {
            case "" or "dent" or "-dent" or "dents" or "dpi" or "/in" or "per inch" or "/inch" or "dents per inch" or "dents/in":
                return ReedSystem.DentsPerInch.Dents(number);
            case "/10" or "/10cm" or "/10 cm" or "per 10 cm":
                return ReedSystem.Metric.Dents(number);
            case "/cm" or "per cm" or "dents/cm" or "dents per cm":
                return Sett.FromPerCentimetre(number);
            default:
                Parsed<ReedSystem> system = ReedSystem.Parse(unit);
                return system.TryGet(out ReedSystem? found)
                    ? found.Dents(number)
                    : system.Problem! with { Where = where, Text = text, Position = match.Groups["unit"].Index };
        }
    }

    [GeneratedRegex(@"^\s*(?<number>\d{1,6}(?:\.\d{1,6})?)(?<unit>.*)$", RegexOptions.ExplicitCapture | RegexOptions.Singleline, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Written();
}
