using System.CommandLine;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright colour mix</c>: the colour that threads of two colours fuse to from a distance.</summary>
internal sealed class ColourMixCommand : ReportCommand
{
    private readonly Argument<string> _one = new("one") { Description = "The first colour, for example #5b2a86." };
    private readonly Argument<string> _other = new("other") { Description = "The second colour." };
    private readonly Option<double> _share = new("--share") { Description = "Visible share of the first colour, 0 to 1.", DefaultValueFactory = _ => 0.5 };

    /// <summary>The command.</summary>
    public ColourMixCommand()
        : base("mix", "The colour that threads of two colours fuse to, seen from afar.")
    {
        Arguments.Add(_one);
        Arguments.Add(_other);
        Options.Add(_share);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        LinearColour one = LinearColour.From(SrgbColour.Parse(input.GetValue(_one)!).At("one"));
        LinearColour other = LinearColour.From(SrgbColour.Parse(input.GetValue(_other)!).At("other"));
        double share = input.GetValue(_share);
        if (share is not (>= 0 and <= 1))
        {
            throw new InputProblemException(new InputProblem($"{share} is not a share.", "--share", "Give a number from 0 to 1, for example 0.4."));
        }

        LinearColour mix = one * share + other * (1 - share);
        SrgbColour codes = mix.ToSrgb();
        CieLab lab = CieLab.From(mix);
        return new Report(
            $"Seen from afar the threads fuse to {codes} (light averaged by visible area).",
            new JsonObject { ["srgb"] = codes.ToString(), ["lab"] = new JsonArray(lab.L, lab.A, lab.B) });
    }
}
