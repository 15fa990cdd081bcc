using System.CommandLine;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Plans;
using Clothwright.Core.Quantities;
using Clothwright.Core.Wordings;
using Clothwright.Core.Worksheets;
using Clothwright.Drawing.Pdf;
using Clothwright.Interchange.Http;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright plan</c>: everything that follows from a worksheet, and the handout.</summary>
internal sealed class PlanCommand : ReportCommand
{
    private readonly Argument<string> _worksheet = new("worksheet") { Description = "Worksheet file, for example samples/reedbed-scarves.json." };
    private readonly Option<string?> _out = new("--out") { Description = "Folder for handout.pdf, face.png, back.png, draft.svg, draft.wif and plan.json." };
    private readonly Option<string?> _explain = new("--explain") { Description = "Show the working of one figure, for example warpLength." };
    private readonly Option<string?> _units = new("--units") { Description = "metric or customary; as the worksheet says if left out." };
    private readonly Option<string> _paper = new("--paper") { Description = "a4 or letter.", DefaultValueFactory = _ => "a4" };
    private readonly Option<string> _language = new("--language") { Description = "Language of the handout: en or de.", DefaultValueFactory = _ => "en" };

    /// <summary>The command.</summary>
    public PlanCommand()
        : base("plan", "Everything that follows from a worksheet: ends, warp, weft, packages, cost, cautions, handout.")
    {
        Arguments.Add(_worksheet);
        foreach (Option option in (Option[])[_out, _explain, _units, _paper, _language]) Options.Add(option);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        PageSize paper = PageSize.Parse(input.GetValue(_paper)!).At("--paper");
        Wording wording = WordingText.Parse(input.GetValue(_language)!).At("--language");
        (Worksheet worksheet, PlanResult plan) = WorksheetFile.Plan(input.GetValue(_worksheet)!);
        UnitStyle units = input.GetValue(_units) is { } wanted ? UnitWord.Read(wanted) : worksheet.Units;
        if (input.GetValue(_explain) is { } figure)
        {
            var working = plan.Figures.Find(figure).At("--explain").Value.Working;
            return new Report(WorkingText.Write(working, units), new JsonObject { ["figure"] = working.Label, ["working"] = WorkingReport.Of(working) });
        }

        JsonObject json = PlanReport.Of(plan, worksheet.Currency, withWorkings: false);
        string text = PlanText.Of(plan, worksheet.Currency, units);
        if (input.GetValue(_out) is { } folder)
        {
            IReadOnlyList<(string Name, byte[] Contents)> files = PlanFiles.Of(worksheet, plan, paper, wording);
            OutputFolder.Write(folder, files);
            text += $"\n\nWrote {string.Join(", ", files.Select(f => f.Name))} to {folder}.";
        }

        return new Report(text, json);
    }
}
