using System.CommandLine;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Colours;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright colour difference</c>: how different two colours look.</summary>
internal sealed class ColourDifferenceCommand : ReportCommand
{
    private readonly Argument<string> _one = new("one") { Description = "A colour, for example #3b7a78." };
    private readonly Argument<string> _other = new("other") { Description = "The colour to hold against it." };

    /// <summary>The command.</summary>
    public ColourDifferenceCommand()
        : base("difference", "How different two colours look (CIEDE2000).")
    {
        Arguments.Add(_one);
        Arguments.Add(_other);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        CieLab one = CieLab.From(SrgbColour.Parse(input.GetValue(_one)!).At("one"));
        CieLab other = CieLab.From(SrgbColour.Parse(input.GetValue(_other)!).At("other"));
        double difference = ColourDifference.Ciede2000(one, other);
        return new Report(
            $"The colours differ by {difference:0.00} (CIEDE2000; about 1 is just seen side by side), {Math.Abs(one.L - other.L):0.0} of it in lightness.",
            new JsonObject { ["deltaE2000"] = difference, ["deltaE76"] = ColourDifference.Cie76(one, other), ["lightnessDifference"] = Math.Abs(one.L - other.L) });
    }
}
