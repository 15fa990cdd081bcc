using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Cloths;
using Clothwright.Cli.Reports;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright yarn compare</c>: in what yarns of one count and several fibres differ, and by how much.</summary>
internal sealed class YarnCompareCommand : ReportCommand
{
    private const int NameWidth = 32;
    private const int ColumnWidth = 18;

    private readonly Argument<string> _count = new("count") { Description = "A count or a label, for example 8/2." };
    private readonly Option<string?> _system = new("--system") { Description = "Count system of the count (see yarn convert)." };
    private readonly Option<string> _fibres = new("--fibres") { Description = "Two fibres or more, for example bamboo,lyocell,cotton,wool; the others are held against the first.", Required = true };

    /// <summary>The command.</summary>
    public YarnCompareCommand()
        : base("compare", "In what yarns of one count and several fibres differ, and by how much.")
    {
        Arguments.Add(_count);
        Options.Add(_system);
        Options.Add(_fibres);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        string text = input.GetValue(_count)!;
        CountSystem? system = SizeArgument.System(input.GetValue(_system));
        Derived<LinearDensity> size = SizeArgument.Read(text, system, "count");
        Fibre[] fibres = [.. input.GetValue(_fibres)!.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(f => FibreCatalogue.Find(f, "--fibres").Value).Distinct()];
        if (fibres.Length < 2)
        {
            throw new InputProblemException(new InputProblem("A comparison needs two different fibres or more.", "--fibres", "Name them with commas between, for example --fibres bamboo,lyocell,cotton,wool."));
        }

        var table = YarnComparison.Of([.. fibres.Select(f =>
            new Yarn(f.Id, f.Name, size, FibreBlend.Pure(f), YarnConstruction.Spun, YarnWords.Undyed))]);
        FibreDifference[] differences = [.. FibreComparison.OfEqualCount(size, fibres)];
        return new Report(Text(text, system, size, fibres, table, differences), Json(size, fibres, table, differences));
    }

    private static string Text(
        string written, CountSystem? system, Derived<LinearDensity> size, Fibre[] fibres, YarnComparison table, FibreDifference[] differences)
    {
        var text = new StringBuilder();
        string named = system is { } given ? $"{written.Trim()} {given.Definition().Name}" : written.Trim();
        text.AppendLine($"{named}, {size.Value.Tex:0.##} tex ({size.Value.YardsPerPound:0} yd/lb), spun alike of:");
        text.AppendLine();
        text.Append(' ', NameWidth).AppendLine(string.Concat(fibres.Select(f => Column(f.Id))).TrimEnd());
        foreach (ComparedProperty property in table.Properties.Skip(1))
        {
            text.Append(property.Name.PadRight(NameWidth)).AppendLine(string.Concat(property.Values.Select(v => Column(v.Format()))).TrimEnd());
        }

        foreach (Fibre fibre in fibres.Skip(1))
        {
            FibreDifference[] own = [.. differences.Where(d => d.Fibre == fibre)];
            text.AppendLine().AppendLine($"{fibre.Name} against {fibres[0].Name}:");
            foreach (FibreDifference difference in own.Where(d => d.Matters)) WrappedText.Append(text, difference.Sentence);
            string[] alike = [.. own.Where(d => !d.Matters).Select(d => Topic(d.Topic))];
            if (alike.Length > 0) WrappedText.Append(text, $"No difference to speak of in {string.Join(", ", alike)}.");
        }

        return text.ToString().TrimEnd();

        static string Column(string cell) => (cell.Length < ColumnWidth ? cell : cell[..(ColumnWidth - 2)] + "…").PadRight(ColumnWidth);
    }

    private static string Topic(FibreTopic topic) => topic switch
    {
        FibreTopic.Diameter => "thickness",
        FibreTopic.Stretch => "stretch",
        FibreTopic.WashingShrinkage => "shrinkage",
        FibreTopic.WetStrength => "strength when wet",
        FibreTopic.Regain => "moisture held",
        _ => "felting",
    };

    private static JsonObject Json(Derived<LinearDensity> size, Fibre[] fibres, YarnComparison table, FibreDifference[] differences) => new()
    {
        ["tex"] = size.Value.Tex,
        ["fibres"] = new JsonArray([.. fibres.Select(f => (JsonNode)f.Id)]),
        ["properties"] = new JsonArray([.. table.Properties.Select(p => new JsonObject
        {
            ["name"] = p.Name,
            ["measures"] = p.Values[0].Kind.ToString(),
            ["values"] = new JsonArray([.. p.Values.Select(v => (JsonNode)v.BaseValue)]),
            ["standardDeviations"] = new JsonArray([.. p.Values.Select(v => (JsonNode)v.Spread.StandardDeviation)]),
            ["differenceFractions"] = new JsonArray([.. p.Differences.Select(d => (JsonNode)d)]),
        })]),
        ["differences"] = new JsonArray([.. differences.Select(d => new JsonObject
        {
            ["fibre"] = d.Fibre.Id,
            ["against"] = d.Against.Id,
            ["topic"] = d.Topic.ToString(),
            ["value"] = d.Value.Working.BaseValue,
            ["againstValue"] = d.AgainstValue.Working.BaseValue,
            ["matters"] = d.Matters,
            ["sentence"] = d.Sentence,
        })]),
    };
}
