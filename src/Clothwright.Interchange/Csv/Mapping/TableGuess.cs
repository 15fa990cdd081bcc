using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Clothwright.Core.Colours;
using Clothwright.Core.Yarns;

namespace Clothwright.Interchange.Csv;

/// <summary>Finds out how a table of yarns seems to be meant.</summary>
internal static partial class TableGuess
{
    private const int LinesLookedAt = 20;
    private const int MostMilliseconds = 1000;

    /// <summary>The separator that divides the first lines most evenly.</summary>
    public static char Separator(string text)
    {
        string[] lines = [.. text.Split('\n').Where(l => !string.IsNullOrWhiteSpace(l)).Take(LinesLookedAt).Select(Unquoted)];
        if (lines.Length == 0) return ',';
        return YarnTableMapping.Separators
            .Select(s => (Separator: s, Counts: lines.Select(l => l.Count(c => c == s)).ToArray()))
            .OrderByDescending(s => s.Counts[0] > 0 && s.Counts.All(c => c == s.Counts[0]) ? 1 : 0)
            .ThenByDescending(s => s.Counts.Min())
            .ThenByDescending(s => s.Counts.Sum())
            .First().Separator;
    }

    /// <summary>Whether the first row names the columns: it holds no numbers, and a name that is known or numbers below it.</summary>
    public static bool HasHeader(List<CsvRow> rows)
    {
        ImmutableArray<string> first = rows[0].Cells;
        if (first.Any(c => Number().IsMatch(c.Trim()))) return false;
        if (first.Any(c => RoleByName(c) is not null)) return true;
        return rows.Count > 1 && Enumerable.Range(0, first.Length).Any(i => first[i].Trim() is [var head, ..] && !char.IsDigit(head) && rows.Skip(1).All(r => r[i].Length > 0 && char.IsDigit(r[i][0])));
    }

    /// <summary>Whether more numbers are written with a decimal comma than with a point.</summary>
    public static bool DecimalComma(List<CsvRow> rows, char separator)
    {
        string[] cells = [.. rows.SelectMany(r => r.Cells).Select(c => c.Trim())];
        int commas = cells.Count(c => CommaNumber().IsMatch(c));
        int points = cells.Count(c => PointNumber().IsMatch(c));
        return commas > points || (commas == points && separator == ';');
    }

    /// <summary>What each column tells: by its name, else by what stands in it. No role is given twice.</summary>
    public static ImmutableArray<YarnColumn> Columns(ImmutableArray<string> headers, List<CsvRow> rows)
    {
        YarnColumn?[] found = [.. headers.Select(RoleByName)];
        for (int i = 0; i < found.Length; i++) found[i] ??= ByCells([.. rows.Select(r => r[i]).Where(c => c.Length > 0).Take(LinesLookedAt)]);
        // A column "colour" may hold names or codes: its cells say which.
        for (int i = 0; i < found.Length; i++)
        {
            string[] cells = [.. rows.Select(r => r[i]).Where(c => c.Length > 0).Take(LinesLookedAt)];
            if (found[i]!.Role == YarnColumnRole.ColourName && cells.Length > 0 && Mostly(cells, c => SrgbColour.Parse(c).Succeeded)) found[i] = new YarnColumn(YarnColumnRole.Colour);
        }

        if (found is [{ Role: YarnColumnRole.Ignore or YarnColumnRole.Name }]) return [new YarnColumn(YarnColumnRole.Words)];
        var seen = new HashSet<YarnColumnRole>();
        return [.. found.Select(c => c!.Role == YarnColumnRole.Ignore || seen.Add(c.Role) ? c : new YarnColumn(YarnColumnRole.Ignore))];
    }

    private static YarnColumn? RoleByName(string header)
    {
        string name = header.Trim();
        if (name.Length == 0) return null;
        string bare = name.Replace('_', ' ');
        YarnColumnRole? role = ColumnWords.RoleOf(bare, out string? unit);
        if (role is YarnColumnRole.NetMass or YarnColumnRole.GrossMass or YarnColumnRole.Tare) return new YarnColumn(role.Value, unit);
        if (role is { } known) return new YarnColumn(known, known == YarnColumnRole.Count ? SystemIn(bare) : null);
        return SystemIn(bare) is { } system ? new YarnColumn(YarnColumnRole.Count, system) : null;
    }

    // "Nm", "tex", "linear density tex", "yd/lb".
    private static string? SystemIn(string header)
    {
        if (CountSystems.Parse(header).TryGet(out CountSystem whole)) return whole.Definition().Name;
        return header.Split([' ', '(', ')', ','], StringSplitOptions.RemoveEmptyEntries).LastOrDefault() is { } last
            && header.Contains(' ', StringComparison.Ordinal)
            && ColumnWords.RoleOf(header[..^last.Length].TrimEnd(' ', '('), out _) is YarnColumnRole.Count
            && CountSystems.Parse(last.TrimEnd(')')).TryGet(out CountSystem system)
                ? system.Definition().Name
                : null;
    }

    private static YarnColumn ByCells(string[] cells)
    {
        if (cells.Length == 0) return new YarnColumn(YarnColumnRole.Ignore);
        return new YarnColumn(
            Mostly(cells, c => SrgbColour.Parse(c).Succeeded) ? YarnColumnRole.Colour
            : Mostly(cells, c => YarnLabel.Parse(c).Succeeded) ? YarnColumnRole.Label
            : Mostly(cells, c => c.Contains('/', StringComparison.Ordinal) && !YarnCount.Readings(c).IsEmpty) ? YarnColumnRole.Count
            : Mostly(cells, c => FibreBlend.Parse(c).Succeeded) ? YarnColumnRole.Fibres
            : Mostly(cells, c => CountSystems.Parse(c).Succeeded) ? YarnColumnRole.CountSystem
            : Mostly(cells, c => Core.Quantities.MassText.Parse(c).Succeeded && char.IsLetter(c[^1])) ? YarnColumnRole.NetMass
            : YarnColumnRole.Ignore);
    }

    private static bool Mostly(string[] cells, Func<string, bool> fits) => cells.Count(fits) * 5 >= cells.Length * 4;

    private static string Unquoted(string line) => Quoted().Replace(line, "");

    [GeneratedRegex("\"[^\"]*\"", RegexOptions.CultureInvariant, MostMilliseconds)]
    private static partial Regex Quoted();

    [GeneratedRegex(@"^[+-]?\d+([.,]\d+)?\s*(%|€|g|kg|oz|lb)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, MostMilliseconds)]
    private static partial Regex Number();

    [GeneratedRegex(@"^\d+,\d+\D*$", RegexOptions.CultureInvariant, MostMilliseconds)]
    private static partial Regex CommaNumber();

    [GeneratedRegex(@"^\d+\.\d+\D*$", RegexOptions.CultureInvariant, MostMilliseconds)]
    private static partial Regex PointNumber();
}
