using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright draft make</c>: a draft of a weave by its name.</summary>
internal sealed class DraftMakeCommand : ReportCommand
{
    private readonly Argument<string?> _weave = new("weave") { Description = "For example \"2/2 twill\", \"pointed 3/1 twill\", \"8-end satin\".", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<int?> _ends = new("--ends") { Description = "Ends; one repeat if left out." };
    private readonly Option<int?> _picks = new("--picks") { Description = "Picks; one repeat if left out." };
    private readonly Option<string[]> _with = new("--with") { Description = "A choice of the weave, for example --with runs=3; may be given several times." };
    private readonly Option<string?> _out = new("--out") { Description = "File to write: .wif, .txt, .csv, .svg or .png." };
    private readonly Option<bool> _list = new("--list") { Description = "List every weave with its choices." };

    /// <summary>The command.</summary>
    public DraftMakeCommand()
        : base("make", "A draft of a weave by its name.")
    {
        Arguments.Add(_weave);
        foreach (Option option in (Option[])[_ends, _picks, _with, _out, _list]) Options.Add(option);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        if (input.GetValue(_list)) return WeaveList.Report();
        if (input.GetValue(_weave) is not { } name)
        {
            throw new InputProblemException(new InputProblem("No weave is named.", "weave", "Name one, for example clothwright draft make \"2/2 twill\", or ask for --list."));
        }

        Dictionary<string, string> choices = Choices(input.GetValue(_with) ?? []);
        Weave repeat = WeaveCatalogue.Make(name, null, choices).At("weave");
        Weave weave = repeat;
        if (input.GetValue(_ends) is not null || input.GetValue(_picks) is not null)
        {
            weave = WeaveCatalogue.Make(name, new WeaveSize(input.GetValue(_ends) ?? repeat.Draft.Ends, input.GetValue(_picks) ?? repeat.Draft.Picks), choices).At("weave");
        }

        Draft draft = weave.Draft with { Name = weave.Name };
        if (input.GetValue(_out) is { } path) OutputFolder.WriteFile(path, DraftFile.Bytes(WovenDraft.Of(draft), path));
        return new Report(Text(weave, draft, repeat), Json(weave, draft));
    }

    private static Dictionary<string, string> Choices(string[] given)
    {
        var choices = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (string choice in given)
        {
            int at = choice.IndexOf('=', StringComparison.Ordinal);
            if (at <= 0)
            {
                throw new InputProblemException(new InputProblem($"\"{choice}\" is not a choice.", "--with", "Write name=value, for example --with runs=3.") { Text = choice, Position = Math.Max(at, 0) });
            }

            choices[choice[..at]] = choice[(at + 1)..];
        }

        return choices;
    }

    private static string Text(Weave weave, Draft draft, Weave repeat)
    {
        var text = new StringBuilder();
        text.AppendLine($"{weave.Name}: {draft.Ends} ends, {draft.Picks} picks, {draft.Shafts} shafts, {draft.Treadles} treadles; repeat {repeat.RepeatEnds} × {repeat.RepeatPicks}");
        WrappedText.Append(text, $"{weave.Rule.Formula} ({weave.Rule.Source})", "", "  ");
        foreach (string note in weave.Notes) WrappedText.Append(text, note);
        text.AppendLine();
        text.Append(DraftText.Of(draft));
        return text.ToString().TrimEnd();
    }

    private static JsonObject Json(Weave weave, Draft draft) => new()
    {
        ["name"] = weave.Name,
        ["ends"] = draft.Ends,
        ["picks"] = draft.Picks,
        ["shafts"] = draft.Shafts,
        ["treadles"] = draft.Treadles,
        ["repeatEnds"] = weave.RepeatEnds,
        ["repeatPicks"] = weave.RepeatPicks,
        ["draft"] = DraftNotation.Format(draft),
        ["rule"] = weave.Rule.Formula,
        ["source"] = weave.Rule.Source.Name,
        ["notes"] = new JsonArray([.. weave.Notes.Select(n => (JsonNode)n)]),
        ["drawdown"] = DraftText.Rows(draft.Drawdown()),
    };
}
