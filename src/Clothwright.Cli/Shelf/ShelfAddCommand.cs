using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Http;
using Clothwright.Storage;

namespace Clothwright.Cli.Shelf;

/// <summary><c>clothwright shelf add</c>: a yarn in free words.</summary>
internal sealed class ShelfAddCommand : ShelfCommand
{
    private readonly Argument<string[]> _words = new("words") { Description = "What it is, in any order, for example \"8/2 bamboo, 200 g cone, tide blue, 3 left\".", Arity = ArgumentArity.OneOrMore };
    private readonly Option<string?> _system = new("--system") { Description = "Count system, where the words leave it open: " + string.Join(", ", CountSystems.All.Select(s => s.Name)) + "." };
    private readonly Option<string?> _fibre = new("--fibre") { Description = "What it is made of, where the words leave it open, for example \"80 % wool, 20 % silk\"." };

    /// <summary>The command.</summary>
    public ShelfAddCommand()
        : base("add", "Puts a yarn on the shelf, read from free words; says what each part was read from.")
    {
        Arguments.Add(_words);
        Options.Add(_system);
        Options.Add(_fibre);
    }

    /// <inheritdoc />
    protected override bool MakesStudio => true;

    /// <inheritdoc />
    protected override async Task<Report> WorkAsync(Studio studio, ParseResult input)
    {
        QuickYarn quick = QuickYarn.Read(string.Join(' ', input.GetValue(_words)!)).Value;
        HashSet<string> taken = [.. (await studio.Shelf.ListAsync()).Select(y => y.Item.Id)];
        YarnEntry entry = Completed(YarnEntry.FromWords(quick, ""), quick, input.GetValue(_system), input.GetValue(_fibre));
        entry = entry with { Id = ShelfId.Of(entry.Name, taken.Contains) };
        Yarn yarn = entry.ToYarn("words").Value;
        await studio.Shelf.KeepAsync(entry, null);
        FreeStock free = ShelfYarnReport.Free(yarn, []);
        var text = new StringBuilder();
        WrappedText.Append(text, "On the shelf: " + ShelfYarnReport.Text(entry, yarn, free) + ".", "", "  ");
        foreach ((string what, string from) in Sources(quick)) text.AppendLine($"  {what}: {(from.Length == 0 ? "not told, taken as usual" : $"from \"{from}\"")}");
        JsonObject json = ShelfYarnReport.Json(new Kept<YarnEntry>(1, entry), yarn, free);
        json["readFrom"] = new JsonObject(Sources(quick).Select(s => KeyValuePair.Create<string, JsonNode?>(s.What, s.From)));
        return new Report(text.ToString().TrimEnd(), json);
    }

    private static YarnEntry Completed(YarnEntry entry, QuickYarn quick, string? system, string? fibre)
    {
        if (fibre is not null)
        {
            FibreBlend blend = FibreBlend.Parse(fibre, "--fibre").Value;
            entry = entry with { Fibres = [.. blend.Shares.Select(s => new FibreEntry(s.Fibre.Id, s.MassShare))] };
        }
        else if (quick.SharesAreGuessed)
        {
            throw new InputProblemException(new InputProblem($"The shares of \"{quick.Fibres!.From}\" are not told.", "words", $"Say them, for example --fibre \"{quick.Fibres.Value}\"."));
        }

        if (system is not null) return entry with { CountSystem = CountSystems.Parse(system, "--system").Value.Definition().Name };
        if (entry is not { Label: null, CountSystem: null, Count: not null }) return entry;
        // The fibre that was given beside the words may make the system sure.
        string again = $"{entry.Count} {string.Join(", ", entry.Fibres.Select(f => $"{f.MassShare.Percent:0.##} % {f.FibreId}"))}";
        return QuickYarn.Read(again).Value.Count?.Taken is { } found ? entry with { Count = found.Label, CountSystem = found.System.Definition().Name } : entry;
    }

    private static IEnumerable<(string What, string From)> Sources(QuickYarn quick)
    {
        if (quick.Label is { } label) yield return ("label", label.From);
        if (quick.Count is { } count) yield return ("count", count.From);
        if (quick.Fibres is { } fibres) yield return ("fibres", fibres.From);
        yield return ("construction", quick.Construction.From);
        yield return ("form", quick.Form.From);
        if (quick.PackageMass is { } mass) yield return ("mass", mass.From);
        if (quick.MassLeft is { } left) yield return ("left", left.From);
        else yield return ("packages", quick.Packages.From);
        if (quick.ColourName is { } name) yield return ("colour name", name.From);
        yield return ("colour", quick.Colour.From);
        if (quick.Lot is { } lot) yield return ("lot", lot.From);
        if (quick.Price is { } price) yield return ("price", price.From);
    }
}
