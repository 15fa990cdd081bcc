using Clothwright.Core.Quantities;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Csv;

/// <summary>A draft as a table, one row an end, a treadle or a pick, to be looked at or changed in a spreadsheet.</summary>
/// <remarks>
/// Columns: part, number, value, colour, spacing_mm, thickness_mm. Parts: <c>name</c>, <c>shafts</c>, <c>shed</c> (rising or
/// sinking), <c>end</c> (its shafts), <c>treadle</c> (its shafts), <c>pick</c> (its treadles), <c>lift</c> (shafts of a pick).
/// Several shafts or treadles stand with blanks between. Colour is <c>#rrggbb</c>.
/// </remarks>
public static class DraftTable
{
    internal const string Part = "part";
    internal const string Number = "number";
    internal const string Value = "value";
    internal const string Colour = "colour";
    internal const string Spacing = "spacing_mm";
    internal const string Thickness = "thickness_mm";

    /// <summary>Reads a table.</summary>
    /// <param name="text">The table; comma, semicolon or tab between the values.</param>
    /// <param name="limits">How large it may be; null for <see cref="ReadingLimits.Usual"/>.</param>
    /// <returns>The draft, or the problem with line and column.</returns>
    public static Parsed<WovenDraft> Read(string text, ReadingLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        limits ??= ReadingLimits.Usual;
        try
        {
            CsvTable table = CsvTable.Read(text, limits, Part, Number, Value);
            var reader = new DraftTableReader(limits);
            foreach (CsvRow row in table.Rows) reader.Take(new CsvCells(table, row));
            return reader.Draft();
        }
        catch (InputProblemException refusal)
        {
            return refusal.Problem;
        }
    }

    /// <summary>Writes a table.</summary>
    /// <param name="woven">The draft.</param>
    /// <exception cref="ArgumentException">A list of threads does not hold one entry a thread.</exception>
    public static string Write(WovenDraft woven)
    {
        ArgumentNullException.ThrowIfNull(woven);
        return CsvText.Write([Part, Number, Value, Colour, Spacing, Thickness], DraftTableRows.Of(woven));
    }

    /// <summary>Whether a line is the first line of such a table.</summary>
    internal static bool IsHead(ReadOnlySpan<char> line)
    {
        ReadOnlySpan<char> plain = line.Trim('\uFEFF').TrimStart('"');
        return plain.StartsWith(Part, StringComparison.OrdinalIgnoreCase) && plain.ContainsAny(",;\t");
    }
}
