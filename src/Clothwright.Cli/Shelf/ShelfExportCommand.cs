using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Csv;
using Clothwright.Storage;

namespace Clothwright.Cli.Shelf;

/// <summary><c>clothwright shelf export</c>: the shelf as a table.</summary>
internal sealed class ShelfExportCommand : ShelfCommand
{
    private readonly Option<string?> _out = new("--out") { Description = "The file to write; the table is printed if left out." };

    /// <summary>The command.</summary>
    public ShelfExportCommand()
        : base("export", "The shelf as a table (CSV), one row a package; shelf import reads it back.") => Options.Add(_out);

    /// <inheritdoc />
    protected override async Task<Report> WorkAsync(Studio studio, ParseResult input)
    {
        Yarn[] yarns = [.. (await studio.Shelf.ListAsync()).Select(k => k.Item.ToYarn()).Where(y => y.Succeeded).Select(y => y.Value)];
        string table = YarnShelfTable.Write(yarns);
        var json = new JsonObject { ["yarns"] = yarns.Length, ["table"] = table };
        if (input.GetValue(_out) is not { } file) return new Report(table.TrimEnd(), json);
        OutputFolder.WriteFile(file, Encoding.UTF8.GetBytes(table));
        return new Report($"{yarns.Length} yarns written to {file}.", json);
    }
}
