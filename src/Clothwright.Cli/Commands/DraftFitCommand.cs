using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Looms;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Fitting;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright draft fit</c>: a draft fitted to a loom, or why it cannot be.</summary>
internal sealed class DraftFitCommand : ReportCommand
{
    private readonly Argument<string> _draft = new("draft") { Description = "File, weave by name, or draft in notation." };
    private readonly Option<int> _shafts = new("--shafts") { Description = "Shafts of the loom.", Required = true };
    private readonly Option<int> _treadles = new("--treadles") { Description = "Treadles of the loom; 0 for levers.", Required = true };
    private readonly Option<int> _feet = new("--feet") { Description = "Treadles that may be pressed at once, 1 to 3.", DefaultValueFactory = _ => 1 };
    private readonly Option<string> _shed = new("--shed") { Description = "rising, sinking, counterbalance, countermarche or levers.", DefaultValueFactory = _ => "rising" };
    private readonly Option<string?> _out = new("--out") { Description = "File for the fitted draft: .wif, .txt, .csv, .svg or .png." };

    /// <summary>The command.</summary>
    public DraftFitCommand()
        : base("fit", "A draft fitted to a loom, with the fewest shafts and treadles, or why it cannot be.")
    {
        Arguments.Add(_draft);
        foreach (Option option in (Option[])[_shafts, _treadles, _feet, _shed, _out]) Options.Add(option);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        Draft draft = WeaveSource.Read(input.GetValue(_draft)!, "draft", out _).Draft;
        int treadles = input.GetValue(_treadles);
        ShedAction shed = LoomWords.ParseShed(input.GetValue(_shed)!).At("--shed");
        var limits = new LoomLimits(input.GetValue(_shafts), treadles, input.GetValue(_feet), treadles == 0 ? ShedAction.Levers : shed);
        LoomFitResult fit = LoomFit.For(draft, limits);
        if (input.GetValue(_out) is { } path && fit.Draft is { } fitted)
        {
            OutputFolder.WriteFile(path, DraftFile.Bytes(Interchange.Drafts.WovenDraft.Of(fitted), path));
        }

        return new Report(Text(fit), Json(fit)) { ExitCode = fit.Feasible ? ExitCode.Done : ExitCode.CheckFailed };
    }

    private static string Text(LoomFitResult fit)
    {
        var text = new StringBuilder();
        text.AppendLine(fit.Feasible
            ? $"It can be woven with {fit.Shafts.Value.Count} shafts and {fit.Treadles.Value.Count} treadles{(fit.Optimal ? ", and with no fewer" : "; fewer are not ruled out")}."
            : "It cannot be woven on this loom as it stands.");
        foreach (string reason in fit.Reasons) text.AppendLine(reason);
        if (fit.Draft is { } draft) text.Append(DraftText.Of(draft));
        return text.ToString().TrimEnd();
    }

    private static JsonObject Json(LoomFitResult fit) => new()
    {
        ["feasible"] = fit.Feasible,
        ["shafts"] = fit.Shafts.Value.Count,
        ["treadles"] = fit.Treadles.Value.Count,
        ["treadlesAtLeast"] = fit.TreadlesAtLeast,
        ["tieUp"] = new JsonArray([.. fit.TieUp.Select(t => (JsonNode)t.ToString())]),
        ["treadling"] = Sets(fit.Treadling),
        ["liftPlan"] = Sets(fit.LiftPlan),
        ["optimal"] = fit.Optimal,
        ["reasons"] = new JsonArray([.. fit.Reasons.Select(r => (JsonNode)r)]),
        ["draft"] = fit.Draft is { } draft ? DraftNotation.Format(draft) : null,
    };

    private static JsonArray Sets(IEnumerable<ShaftSet> sets) =>
        [.. sets.Select(s => new JsonArray([.. s.Members().Select(m => (JsonNode)m)]))];
}
