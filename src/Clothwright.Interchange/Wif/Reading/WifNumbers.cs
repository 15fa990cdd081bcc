using System.Globalization;

namespace Clothwright.Interchange.Wif;

/// <summary>Reads numbers, truths and lists as files write them.</summary>
internal static class WifNumbers
{
    /// <summary>The smallest and largest spacing or thickness that is believed, in any unit; 0 is allowed as well.</summary>
    public const double LeastReal = 1e-4;

    public const double MostReal = 1e6;

    /// <summary>Cuts a trailing comment; only for values that cannot hold a semicolon.</summary>
    public static ReadOnlySpan<char> WithoutComment(ReadOnlySpan<char> value)
    {
        int semicolon = value.IndexOf(';');
        return (semicolon < 0 ? value : value[..semicolon]).Trim();
    }

    /// <summary>A whole number; numbers too large for the type become the largest or smallest it holds.</summary>
    public static bool TryWhole(ReadOnlySpan<char> text, out int number)
    {
        number = 0;
        ReadOnlySpan<char> digits = !text.IsEmpty && (text[0] is '+' or '-') ? text[1..] : text;
        if (digits.IsEmpty) return false;
        if (digits.ContainsAnyExceptInRange('0', '9')) return false;
        if (int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out number)) return true;
        number = text[0] == '-' ? int.MinValue : int.MaxValue;
        return true;
    }

    /// <summary>A real number with a point, or with a comma in its place.</summary>
    public static bool TryReal(ReadOnlySpan<char> text, out double number, out bool commaForPoint)
    {
        commaForPoint = text.Count(',') == 1 && !text.Contains('.');
        string plain = commaForPoint ? text.ToString().Replace(',', '.') : text.ToString();
        return double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);
    }

    public static bool? Truth(ReadOnlySpan<char> text)
    {
        foreach (string word in (ReadOnlySpan<string>)["true", "yes", "on", "1", "t", "y"])
        {
            if (text.Equals(word, StringComparison.OrdinalIgnoreCase)) return true;
        }

        foreach (string word in (ReadOnlySpan<string>)["false", "no", "off", "0", "f", "n"])
        {
            if (text.Equals(word, StringComparison.OrdinalIgnoreCase)) return false;
        }

        return null;
    }

    /// <summary>The shortest text that reads back as the same number, without an exponent for any number that is believed.</summary>
    public static string Written(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    public static string Written(int number) => number.ToString(CultureInfo.InvariantCulture);
}
