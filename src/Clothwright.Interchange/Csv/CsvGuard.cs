using System.Buffers;

namespace Clothwright.Interchange.Csv;

/// <summary>Keeps text from being run as a formula when a table is opened in a spreadsheet.</summary>
/// <remarks>
/// A value that begins with = + - @, a tab or a line end is written with an apostrophe in front (OWASP, "CSV Injection", from
/// memory), and so is one that begins with an apostrophe, so that reading gives back exactly what was written.
/// </remarks>
internal static class CsvGuard
{
    private static readonly SearchValues<char> Dangerous = SearchValues.Create("=+-@\t\r\n'＝＋－＠");

    public static string Guarded(string value) => value.Length > 0 && Dangerous.Contains(value[0]) ? "'" + value : value;

    public static string Unguarded(string value) =>
        value.Length > 1 && value[0] == '\'' && Dangerous.Contains(value[1]) ? value[1..] : value;
}
