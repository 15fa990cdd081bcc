using System.Globalization;

namespace Clothwright.Interchange.Csv;

/// <summary>Reads the values of one row, and names the place of what cannot be read.</summary>
internal readonly struct CsvCells(CsvTable table, CsvRow row)
{
    public string Text(string column) => row[table.IndexOf(column)];

    /// <summary>A whole number; null if the cell is empty.</summary>
    public int? Whole(string column, int least, int most)
    {
        string text = Text(column);
        if (text.Length == 0) return null;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= least && number <= most) return number;
        throw Problem(column, $"\"{text}\" is not a whole number from {least} to {most}.", $"Write it in digits, for example {least}.");
    }

    /// <summary>A number, 0 or more; null if the cell is empty. A single comma is read as a decimal comma.</summary>
    public double? Measure(string column)
    {
        string text = Text(column);
        if (text.Length == 0) return null;
        string plain = text.Count(static c => c == ',') == 1 && !text.Contains('.', StringComparison.Ordinal) ? text.Replace(',', '.') : text;
        if (double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && number is >= 0 and < 1e9) return number;
        throw Problem(column, $"\"{text}\" is not a number, 0 or more.", "Write it with a point for decimals, for example 1.25.");
    }

    /// <summary>One of a few words; the usual one if the cell is empty.</summary>
    public T Choice<T>(string column, T usual)
        where T : struct, Enum
    {
        string text = Text(column);
        if (text.Length == 0) return usual;
        foreach (T value in Enum.GetValues<T>())
        {
            if (text.Equals(value.ToString(), StringComparison.OrdinalIgnoreCase)) return value;
        }

        string words = string.Join(", ", Enum.GetNames<T>()).ToLowerInvariant();
        throw Problem(column, $"\"{text}\" is not one of {words}.", $"Write one of them, for example {usual.ToString().ToLowerInvariant()}.");
    }

    public Core.Quantities.InputProblemException Problem(string column, string what, string mend) =>
        CsvTable.Problem($"line {row.Line}, column {column}", what, mend);
}
