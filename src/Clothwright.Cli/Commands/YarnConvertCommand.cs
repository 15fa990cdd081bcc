using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Http;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright yarn convert</c>: a count or a label in every other way of saying it.</summary>
internal sealed class YarnConvertCommand : ReportCommand
{
    // What a weaver meets on cones and in books; the rest is in the JSON.
    private static readonly CountSystem[] Shown =
    [
        CountSystem.Cotton, CountSystem.Worsted, CountSystem.Linen, CountSystem.Metric, CountSystem.WoollenRun,
        CountSystem.Denier, CountSystem.YardsPerPound, CountSystem.MetresPerKilogram, CountSystem.MetresPer100Grams,
    ];

    private readonly Argument<string> _count = new("count") { Description = "As written on the yarn: 8/2, 2/48, R 60 tex/2, or a label such as \"400 m / 100 g\"." };
    private readonly Option<string?> _system = new("--system") { Description = "Count system: " + string.Join(", ", CountSystems.All.Select(s => s.Name)) + "." };

    /// <summary>The command.</summary>
    public YarnConvertCommand()
        : base("convert", "A count or a label in every other system, with the other readings of the same words.")
    {
        Arguments.Add(_count);
        Options.Add(_system);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        string text = input.GetValue(_count)!;
        CountSystem? system = SizeArgument.System(input.GetValue(_system));
        Derived<LinearDensity> yarn = SizeArgument.Read(text, system, "count");
        string? remark = SizeArgument.Remark(text, system);
        YarnCount[] others = [.. YarnCount.Readings(text).Where(r => Math.Abs(r.Tex / yarn.Value.Tex - 1) > 1e-9)];
        return new Report(Text(text, yarn, remark, others), Json(yarn, remark, others));
    }

    private static string Text(string written, Derived<LinearDensity> yarn, string? remark, YarnCount[] others)
    {
        LinearDensity size = yarn.Value;
        var text = new StringBuilder();
        text.AppendLine($"{written.Trim()}: {size.Tex:0.##} tex, likely {yarn.Working.Lower95:0.#} to {yarn.Working.Upper95:0.#} as sold");
        text.AppendLine($"  {yarn.Working.Rule.Name} ({yarn.Working.Rule.Source})");
        if (remark is not null) WrappedText.Append(text, remark, "  ", "  ");
        foreach (CountSystem system in Shown)
        {
            CountSystemDefinition definition = system.Definition();
            text.AppendLine($"  {definition.NumberOf(size),10:0.###}  {definition.Title}");
        }

        if (others.Length > 0)
        {
            text.AppendLine("The same words mean other yarns in other systems; ask which it is:");
            foreach (YarnCount other in others)
            {
                var reading = LinearDensity.FromTex(other.Tex);
                text.AppendLine($"  {other,-22} {other.Tex,8:0.##} tex  {reading.YardsPerPound,7:0} yd/lb  {reading.MetresPerKilogram,7:0} m/kg");
            }
        }

        return text.ToString().TrimEnd();
    }

    private static JsonObject Json(Derived<LinearDensity> yarn, string? remark, YarnCount[] others)
    {
        LinearDensity size = yarn.Value;
        return new JsonObject
        {
            ["tex"] = size.Tex,
            ["texStandardDeviation"] = yarn.StandardDeviation,
            ["metresPerKilogram"] = size.MetresPerKilogram,
            ["yardsPerPound"] = size.YardsPerPound,
            ["resultantCounts"] = new JsonObject(CountSystems.All.Select(s => KeyValuePair.Create<string, JsonNode?>(s.Name, s.NumberOf(size)))),
            ["otherReadings"] = new JsonArray([.. others.Select(Reading)]),
            ["remark"] = remark,
            ["working"] = WorkingReport.Of(yarn.Working),
        };
    }

    private static JsonObject Reading(YarnCount count)
    {
        var size = LinearDensity.FromTex(count.Tex);
        return new JsonObject
        {
            ["system"] = count.System.Definition().Name,
            ["label"] = count.ToString(),
            ["tex"] = count.Tex,
            ["metresPerKilogram"] = size.MetresPerKilogram,
            ["yardsPerPound"] = size.YardsPerPound,
        };
    }
}
