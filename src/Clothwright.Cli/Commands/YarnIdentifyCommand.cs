using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright yarn identify</c>: what a yarn that lost its label can be.</summary>
internal sealed class YarnIdentifyCommand : ReportCommand
{
    private const int ReadingsShown = 8;

    private readonly Option<string> _length = new("--length") { Description = "A measured length, straight but not stretched, for example 10m.", Required = true };
    private readonly Option<string> _mass = new("--mass") { Description = "What that length weighs, for example 1.48g.", Required = true };
    private readonly Option<double?> _wraps = new("--wraps-per-inch") { Description = "Wraps touching on a ruler, in one inch." };
    private readonly Option<int?> _strands = new("--strands") { Description = "Strands seen when it is untwisted." };
    private readonly Option<string?> _burns = new("--burns") { Description = "How a short end burns, held in tweezers over water: " + Words<BurnHint>() + "." };
    private readonly Option<string?> _feels = new("--feels") { Description = "How it feels: " + Words<FeelHint>() + "." };

    /// <summary>The command.</summary>
    public YarnIdentifyCommand()
        : base("identify", "What a yarn that lost its label can be, likeliest first.")
    {
        foreach (Option option in (Option[])[_length, _mass, _wraps, _strands, _burns, _feels]) Options.Add(option);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        var clues = new YarnClues(
            LengthText.Parse(input.GetValue(_length)!, "--length").Value,
            MassText.Parse(input.GetValue(_mass)!, "--mass").Value)
        {
            Wraps = input.GetValue(_wraps) is { } wraps ? Wraps(wraps) : null,
            Plies = input.GetValue(_strands),
            Burns = Hint<BurnHint>(input.GetValue(_burns), "--burns"),
            Feels = Hint<FeelHint>(input.GetValue(_feels), "--feels"),
        };
        IdentifiedYarn yarn = YarnIdentification.Identify(clues).Value;
        return new Report(Text(yarn), Json(yarn));
    }

    private static Sett Wraps(double perInch) => double.IsFinite(perInch) && perInch > 0
        ? Sett.FromPerInch(perInch)
        : throw new InputProblemException(new InputProblem($"{perInch} wraps cannot be counted.", "--wraps-per-inch", "Give a number above 0, for example 33."));

    private static string Text(IdentifiedYarn yarn)
    {
        var text = new StringBuilder();
        text.AppendLine($"{yarn.LinearDensity.Value.Tex:0.#} tex (likely {yarn.LinearDensity.Working.Lower95:0.#} to {yarn.LinearDensity.Working.Upper95:0.#}), "
            + $"{yarn.LinearDensity.Value.MetresPerKilogram:0} m/kg, {yarn.LinearDensity.Value.YardsPerPound:0} yd/lb. It can be:");
        foreach (YarnReading reading in yarn.Readings.Take(ReadingsShown)) WrappedText.Append(text, reading.Sentence, $"  {reading.Chance.Percent,3:0} %  ", "         ");
        if (!yarn.KnittingClasses.IsEmpty) text.AppendLine("By thickness: " + string.Join(", ", yarn.KnittingClasses.Select(c => c.ToString())) + ".");
        foreach (string test in yarn.NextTests) WrappedText.Append(text, test, "Next: ", "      ");
        return text.ToString().TrimEnd();
    }

    private static JsonObject Json(IdentifiedYarn yarn) => new()
    {
        ["tex"] = yarn.LinearDensity.Value.Tex,
        ["texStandardDeviation"] = yarn.LinearDensity.StandardDeviation,
        ["metresPerKilogram"] = yarn.LinearDensity.Value.MetresPerKilogram,
        ["yardsPerPound"] = yarn.LinearDensity.Value.YardsPerPound,
        ["readings"] = new JsonArray([.. yarn.Readings.Select(r => new JsonObject
        {
            ["count"] = r.Count.Label,
            ["system"] = r.Count.System.Definition().Name,
            ["fibre"] = r.Fibre.Id,
            ["chanceFraction"] = r.Chance.Value,
            ["deviationFraction"] = r.Deviation.Value,
        })]),
        ["unlistedFraction"] = yarn.Unlisted.Value,
        ["knittingClasses"] = new JsonArray([.. yarn.KnittingClasses.Select(c => (JsonNode)c.ToString())]),
        ["next"] = new JsonArray([.. yarn.NextTests.Select(t => (JsonNode)t)]),
    };

    private static string Words<T>()
        where T : struct, Enum => string.Join(", ", Enum.GetNames<T>().Select(Word));

    private static string Word(string name) => string.Concat(name.Select((c, i) => char.IsUpper(c) && i > 0 ? "-" + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));

    private static T? Hint<T>(string? text, string where)
        where T : struct, Enum
    {
        if (text is null) return null;
        foreach (T value in Enum.GetValues<T>())
        {
            if (Word(value.ToString()).Equals(text.Trim(), StringComparison.OrdinalIgnoreCase)) return value;
        }

        throw new InputProblemException(new InputProblem($"\"{text}\" is none of the hints.", where, $"Use one of {Words<T>()}."));
    }
}
