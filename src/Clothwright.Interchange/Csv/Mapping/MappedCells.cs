using System.Globalization;
using Clothwright.Core.Quantities;

namespace Clothwright.Interchange.Csv;

/// <summary>The cells of one row by what their columns tell.</summary>
internal readonly struct MappedCells(YarnTableMapping mapping, string[] headers, CsvRow row)
{
    public string Text(YarnColumnRole role) => IndexOf(role) is >= 0 and var index ? row[index] : "";

    public string? Unit(YarnColumnRole role) => IndexOf(role) is >= 0 and var index ? mapping.Columns[index].Unit : null;

    /// <summary>A mass with its unit in the cell, or in that of its column, or in grams; null if the cell is empty.</summary>
    public Mass? Mass(YarnColumnRole role)
    {
        string text = Text(role);
        if (text.Length == 0) return null;
        string plain = Plain(text);
        if (Number(plain) is not null) plain = $"{plain} {Unit(role) ?? "g"}";
        Parsed<Mass> mass = MassText.Parse(plain);
        return mass.TryGet(out Mass read) ? read : throw Problem(role, mass.Problem!.What, mass.Problem.Mend);
    }

    /// <summary>A number, 0 or more; null if the cell is empty.</summary>
    public double? Number(YarnColumnRole role, double most)
    {
        string text = Text(role);
        if (text.Length == 0) return null;
        string plain = Plain(text).Trim('€', '$', '£', ' ');
        return Number(plain) is { } number && number <= most
            ? number
            : throw Problem(role, $"\"{text}\" is not a number from 0 to {most.ToString(CultureInfo.InvariantCulture)}.", "Write it in digits, or choose whether it has a decimal comma.");
    }

    /// <summary>A text with decimal points: what a comma means, the mapping says.</summary>
    public string Plain(string text)
    {
        if (!mapping.DecimalComma) return text;
        char[] plain = text.ToCharArray();
        for (int i = 1; i + 1 < plain.Length; i++)
        {
            if (plain[i] == ',' && char.IsAsciiDigit(plain[i - 1]) && char.IsAsciiDigit(plain[i + 1])) plain[i] = '.';
        }

        return new string(plain);
    }

    public InputProblemException Problem(YarnColumnRole role, string what, string mend) =>
        CsvTable.Problem(IndexOf(role) is >= 0 and var index ? $"line {row.Line}, column {headers[index]}" : $"line {row.Line}", what, mend);

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number : null;

    private int IndexOf(YarnColumnRole role)
    {
        for (int i = 0; i < mapping.Columns.Length; i++)
        {
            if (mapping.Columns[i].Role == role) return i;
        }

        return -1;
    }
}
