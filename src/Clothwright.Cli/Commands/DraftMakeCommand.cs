using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Drawing.Drafts;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright draft make</c>: a draft of a weave by its name.</summary>
internal sealed class DraftMakeCommand : ReportCommand
{
    private readonly Argument<string?> _weave = new("weave") { Description = "For example \"2/2 twill\", \"pointed 3/1 twill\", \"8-end satin\".", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<int?> _ends = new("--ends") { Description = "Ends; one repeat if left out." };
    private readonly Option<int?> _picks = new("--picks") { Description = "Picks; one repeat if left out." };
    private readonly Option<string[]> _with = new("--with") { Description = "A choice of the weave, for example --with runs=3; may be given several times." };
    private readonly Option<string?> _profile = new("--profile") { Description = "For a weave in blocks: the profile as a small draft or cloth in a file (.wif, .txt grid, .csv, .png); a shaft is a block, warp on top shows it." };
    private readonly Option<string?> _out = new("--out") { Description = "File to write: .wif, .txt, .csv, .svg or .png." };
    private readonly Option<bool> _list = new("--list") { Description = "List every weave with its choices." };

    /// <summary>The command.</summary>
    public DraftMakeCommand()
        : base("make", "A draft of a weave by its name.")
    {
        Arguments.Add(_weave);
        foreach (Option option in (Option[])[_ends, _picks, _with, _profile, _out, _list]) Options.Add(option);
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
        if (input.GetValue(_profile) is { } profile) Fill(choices, ProfileFile.Read(profile));
        Weave repeat = WeaveCatalogue.Make(name, null, choices).At("weave");
        Weave weave = repeat;
        if (input.GetValue(_ends) is not null || input.GetValue(_picks) is not null || repeat.Pictured is not null)
        {
            WeaveSize usual = repeat.Pictured ?? new WeaveSize(repeat.Draft.Ends, repeat.Draft.Picks);
            weave = WeaveCatalogue.Make(name, new WeaveSize(input.GetValue(_ends) ?? usual.Ends, input.GetValue(_picks) ?? usual.Picks), choices).At("weave");
        }

        Draft draft = weave.Draft with { Name = weave.Name };
        if (input.GetValue(_out) is { } path) OutputFolder.WriteFile(path, DraftFile.Bytes(WeaveColours.Of(weave), path, Style(weave)));
        return new Report(Text(weave, draft, repeat), Json(weave, draft));
    }

    // Where two orders of yarn make the figure, it shows in their colours; a plan of areas is never cut short.
    private static DraftStyle Style(Weave weave) => new()
    {
        Areas = weave.Areas,
        BracketRepeats = weave.Areas is null,
        Ink = weave.Draft is { WarpOrder.Yarns: > 1, WeftOrder.Yarns: > 1 } ? DrawdownInk.Threads : DrawdownInk.Structure,
    };

    private static void Fill(Dictionary<string, string> choices, Profile profile)
    {
        choices["blocks"] = profile.BlocksText;
        choices["shown"] = profile.ShownText;
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
