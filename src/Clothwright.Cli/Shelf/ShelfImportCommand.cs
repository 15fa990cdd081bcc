using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.Csv;
using Clothwright.Storage;

namespace Clothwright.Cli.Shelf;

/// <summary><c>clothwright shelf import</c>: someone's own table of yarns.</summary>
internal sealed class ShelfImportCommand : ShelfCommand
{
    private const int ProblemsShown = 20;

    private readonly Argument<string> _file = new("file") { Description = "A table of yarns: any columns, parted by commas, semicolons, tabs or upright strokes." };
    private readonly Option<string[]> _columns = new("--column") { Description = "What a column means, for example \"Gewicht=net-mass:oz\": " + string.Join(", ", Enum.GetNames<YarnColumnRole>().Select(Word)) + ". May be given more than once.", AllowMultipleArgumentsPerToken = false };
    private readonly Option<bool> _replace = new("--replace") { Description = "Yarns of the shelf give way to those of the same short name." };
    private readonly Option<bool> _dry = new("--look") { Description = "Only say what would come in; keep nothing." };

    /// <summary>The command.</summary>
    public ShelfImportCommand()
        : base("import", "Puts the yarns of any table on the shelf: all of them, or none, with every problem by its line.")
    {
        Arguments.Add(_file);
        foreach (Option option in (Option[])[_columns, _replace, _dry]) Options.Add(option);
    }

    /// <inheritdoc />
    protected override bool MakesStudio => true;

    /// <inheritdoc />
    protected override async Task<Report> WorkAsync(Studio studio, ParseResult input)
    {
        string table = Decoded(InputFile.Read(input.GetValue(_file)!));
        YarnTableSurvey survey = YarnTableSurvey.Of(table).Value;
        YarnTableMapping mapping = survey.Mapping with { Columns = Said(survey, input.GetValue(_columns) ?? []) };
        HashSet<string> taken = [.. (await studio.Shelf.ListAsync()).Select(y => y.Item.Id)];
        YarnTableOutcome outcome = YarnTableReader.Read(table, mapping, taken.Contains);
        if (!outcome.Problems.IsEmpty) throw new InputProblemException(Together(outcome.Problems));
        YarnEntry[] there = [.. outcome.Yarns.Where(y => taken.Contains(y.Id))];
        bool look = input.GetValue(_dry);
        if (there.Length > 0 && !input.GetValue(_replace) && !look) throw new InputProblemException(new InputProblem($"{there.Length} yarns stand on the shelf already, for example \"{there[0].Id}\".", "id", "Give --replace to let them give way, or take their rows out."));
        if (!look) await studio.Shelf.KeepAllAsync(outcome.Yarns);
        return new Report(Text(survey, mapping, outcome, look), Json(survey, mapping, outcome, look));
    }

    private static string Text(YarnTableSurvey survey, YarnTableMapping mapping, YarnTableOutcome outcome, bool look)
    {
        var text = new StringBuilder();
        text.AppendLine($"Columns: {string.Join(", ", survey.Headers.Zip(mapping.Columns, (h, c) => $"{h} = {Word(c.Role.ToString())}{(c.Unit is null ? "" : $":{c.Unit}")}"))}");
        foreach (YarnEntry yarn in outcome.Yarns) text.AppendLine($"  {yarn.Id}: {yarn.Name}, {yarn.Packages.Length} packages");
        text.Append(look ? $"{outcome.Yarns.Length} yarns would come onto the shelf." : $"{outcome.Yarns.Length} yarns came onto the shelf.");
        return text.ToString();
    }

    private static JsonObject Json(YarnTableSurvey survey, YarnTableMapping mapping, YarnTableOutcome outcome, bool look) => new()
    {
        ["kept"] = !look,
        ["columns"] = new JsonArray([.. survey.Headers.Zip(mapping.Columns, (h, c) => new JsonObject { ["header"] = h, ["means"] = Word(c.Role.ToString()), ["unit"] = c.Unit })]),
        ["yarns"] = new JsonArray([.. outcome.Yarns.Select((y, i) => new JsonObject { ["line"] = outcome.Lines[i], ["id"] = y.Id, ["name"] = y.Name, ["packages"] = y.Packages.Length })]),
    };

    private static ImmutableArray<YarnColumn> Said(YarnTableSurvey survey, string[] said)
    {
        ImmutableArray<YarnColumn> columns = survey.Mapping.Columns;
        foreach (string words in said)
        {
            string[] parts = words.Split('=', 2);
            int at = survey.Headers.IndexOf(parts[0].Trim());
            if (at < 0 || parts.Length != 2) throw new InputProblemException(new InputProblem($"\"{words}\" names no column of the table.", "--column", $"Write one of {string.Join(", ", survey.Headers)}, an equals sign and what it means, for example \"{survey.Headers[0]}=name\"."));
            string[] meaning = parts[1].Split(':', 2);
            YarnColumnRole? role = Enum.GetValues<YarnColumnRole>().Where(r => string.Equals(Word(r.ToString()), meaning[0].Trim(), StringComparison.OrdinalIgnoreCase)).Select(r => (YarnColumnRole?)r).FirstOrDefault();
            if (role is not { } known) throw new InputProblemException(new InputProblem($"\"{meaning[0]}\" is nothing that a column can mean.", "--column", $"Use one of {string.Join(", ", Enum.GetNames<YarnColumnRole>().Select(Word))}."));
            columns = [.. columns.Select((c, i) => i == at ? new YarnColumn(known, meaning.Length > 1 ? meaning[1].Trim() : null) : c.Role == known ? new YarnColumn(YarnColumnRole.Ignore) : c)];
        }

        return columns;
    }

    private static InputProblem Together(ImmutableArray<InputProblem> problems)
    {
        if (problems.Length == 1) return problems[0];
        IEnumerable<string> lines = problems.Take(ProblemsShown).Select(p => $"{p.Where}: {p.What}");
        string more = problems.Length > ProblemsShown ? $" And {problems.Length - ProblemsShown} more." : "";
        return new InputProblem($"{problems.Length} rows cannot be read. {string.Join(" ", lines)}{more}", "table", $"{problems[0].Mend} Or say what a column means with --column; nothing was kept.");
    }

    // UTF-8, or else what older spreadsheets write: each byte a letter of Latin-1.
    private static string Decoded(byte[] bytes)
    {
        try
        {
            return bytes is [0xFF, 0xFE, ..] ? Encoding.Unicode.GetString(bytes) : new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return Encoding.Latin1.GetString(bytes);
        }
    }

    private static string Word(string name) => string.Concat(name.Select((c, i) => char.IsUpper(c) && i > 0 ? "-" + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));
}
