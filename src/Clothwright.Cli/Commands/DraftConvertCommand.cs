using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright draft convert</c>: a draft from one kind of file into another.</summary>
internal sealed class DraftConvertCommand : ReportCommand
{
    private readonly Argument<string> _in = new("in") { Description = "Draft file: .wif, .txt grid, .csv table, or .png picture of a two-colour drawdown." };
    private readonly Argument<string> _out = new("out") { Description = "File to write: .wif, .txt, .csv, .svg or .png." };

    /// <summary>The command.</summary>
    public DraftConvertCommand()
        : base("convert", "A draft from one kind of file into another.")
    {
        Arguments.Add(_in);
        Arguments.Add(_out);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        string path = input.GetValue(_out)!;
        WovenDraft woven = WeaveSource.Read(input.GetValue(_in)!, "in", out IReadOnlyList<string> warnings);
        OutputFolder.WriteFile(path, DraftFile.Bytes(woven, path));
        var text = new StringBuilder($"Wrote {path}: {woven.Draft.Ends} ends, {woven.Draft.Picks} picks, {woven.Draft.Shafts} shafts.");
        foreach (string warning in warnings) text.AppendLine().Append("In the file: ").Append(warning);
        return new Report(text.ToString(), new JsonObject
        {
            ["written"] = path,
            ["ends"] = woven.Draft.Ends,
            ["picks"] = woven.Draft.Picks,
            ["shafts"] = woven.Draft.Shafts,
            ["fileWarnings"] = new JsonArray([.. warnings.Select(w => (JsonNode)w)]),
        });
    }
}
