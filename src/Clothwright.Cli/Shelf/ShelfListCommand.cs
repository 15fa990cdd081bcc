using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Http;
using Clothwright.Storage;

namespace Clothwright.Cli.Shelf;

/// <summary><c>clothwright shelf list</c>: what is on the shelf, or what fits.</summary>
internal sealed class ShelfListCommand : ShelfCommand
{
    private readonly Argument<string[]> _words = new("words") { Description = "Words that must stand in name, fibres, make or lots; none for the whole shelf.", Arity = ArgumentArity.ZeroOrMore };
    private readonly Option<string?> _fibre = new("--fibre") { Description = "A fibre that must be in it, for example cotton." };
    private readonly Option<string?> _finest = new("--finest") { Description = "The finest that will do, for example \"16/2 cotton\" or 70tex." };
    private readonly Option<string?> _thickest = new("--thickest") { Description = "The thickest that will do, for example \"8/2 cotton\" or 150tex." };
    private readonly Option<string?> _near = new("--near") { Description = "A colour it should be near, for example #2f5f77; the nearest comes first." };

    /// <summary>The command.</summary>
    public ShelfListCommand()
        : base("list", "The yarns on the shelf with what is left, set aside and free.")
    {
        Arguments.Add(_words);
        foreach (Option option in (Option[])[_fibre, _finest, _thickest, _near]) Options.Add(option);
    }

    /// <inheritdoc />
    protected override async Task<Report> WorkAsync(Studio studio, ParseResult input)
    {
        var query = new YarnQuery
        {
            Words = string.Join(' ', input.GetValue(_words) ?? []),
            FibreId = input.GetValue(_fibre) is { } fibre ? FibreCatalogue.Find(fibre, "--fibre").Value.Id : null,
            Finest = Size(input.GetValue(_finest), "--finest"),
            Thickest = Size(input.GetValue(_thickest), "--thickest"),
            Near = input.GetValue(_near) is { } colour ? ParsedAt(SrgbColour.Parse(colour)) : null,
        };
        ImmutableArray<Kept<YarnEntry>> shelf = await studio.Shelf.ListAsync();
        Kept<YarnReservation>[] reserved = await studio.Reservations.ListAsync();
        (Kept<YarnEntry> Kept, Yarn Yarn)[] yarns = [.. shelf.Select(k => (k, k.Item.ToYarn())).Where(k => k.Item2.Succeeded).Select(k => (k.k, k.Item2.Value))];
        YarnMatch[] found = [.. YarnSearch.Find([.. yarns.Select(y => y.Yarn)], query)];
        IEnumerable<string> lines = found.Select(m => ShelfYarnReport.Text(yarns[m.Index].Kept.Item, m.Yarn, ShelfYarnReport.Free(m.Yarn, reserved)));
        var json = new JsonArray([.. found.Select(m => ShelfYarnReport.Json(yarns[m.Index].Kept, m.Yarn, ShelfYarnReport.Free(m.Yarn, reserved)))]);
        string text = found.Length == 0 ? shelf.IsEmpty ? "The shelf is empty." : "No yarn on the shelf fits." : string.Join(Environment.NewLine, lines);
        return new Report(text, new JsonObject { ["yarns"] = json });
    }

    private static LinearDensity? Size(string? text, string where) => text is null ? null : YarnSize.Parse(text, null, where).Value.Value;

    private static SrgbColour ParsedAt(Parsed<SrgbColour> colour) =>
        colour.Problem is { } problem ? throw new InputProblemException(problem with { Where = "--near" }) : colour.Value;
}
