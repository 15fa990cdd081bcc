using System.CommandLine;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Drawing.Images;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright colour simulate</c>: a picture of cloth as another kind of colour vision sees it.</summary>
internal sealed class ColourSimulateCommand : ReportCommand
{
    private readonly Argument<string> _picture = new("picture") { Description = "A picture, for example the face.png that plan writes." };
    private readonly Option<string> _vision = new("--vision") { Description = "protan (reds look dark), deutan (the commonest) or tritan (blue and yellow; rare).", Required = true };
    private readonly Option<double> _severity = new("--severity") { Description = "0 (usual vision) to 1 (these cones are missing).", DefaultValueFactory = _ => 1 };
    private readonly Option<string?> _out = new("--out") { Description = "File to write; beside the picture, with the vision in its name, if left out." };

    /// <summary>The command.</summary>
    public ColourSimulateCommand()
        : base("simulate", "A picture as someone sees it who tells reds and greens, or blues and yellows, less well apart.")
    {
        Arguments.Add(_picture);
        foreach (Option option in (Option[])[_vision, _severity, _out]) Options.Add(option);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        string picture = input.GetValue(_picture)!;
        ColourVision vision = Vision(input.GetValue(_vision)!);
        double severity = input.GetValue(_severity);
        if (severity is not (>= 0 and <= 1))
        {
            throw new InputProblemException(new InputProblem($"{severity} is no severity.", "--severity", "Give a number from 0 to 1, for example 0.6."));
        }

        string word = vision.ToString().ToLowerInvariant();
        string path = input.GetValue(_out) ?? Path.Combine(Path.GetDirectoryName(picture) ?? "", $"{Path.GetFileNameWithoutExtension(picture)}-{word}.png");
        if (Path.GetFullPath(path) == Path.GetFullPath(picture))
        {
            throw new InputProblemException(new InputProblem("The picture would be written over itself.", "--out", "Name another file."));
        }

        byte[] png = VisionPicture.Seen(InputFile.Read(picture), vision, severity).At(Path.GetFileName(picture));
        OutputFolder.WriteFile(path, png);
        return new Report(
            $"Wrote {path}: {Path.GetFileName(picture)} as seen with {word} vision, severity {severity:0.##}.\n"
            + $"{Meaning(vision)}\nA simulation tells which differences get lost, not what anyone sees: ask the person the cloth is for. (Machado, Oliveira and Fernandes 2009)",
            new JsonObject { ["written"] = path, ["vision"] = word, ["severity"] = severity });
    }

    private static string Meaning(ColourVision vision) => vision switch
    {
        ColourVision.Protan => "Reds look dark, reds and greens come close.",
        ColourVision.Deutan => "Reds and greens come close; this is the commonest kind.",
        _ => "Blues and greens, yellows and pinks come close; it is rare, and the simulation is weakest here.",
    };

    private static ColourVision Vision(string text)
    {
        foreach (ColourVision vision in Enum.GetValues<ColourVision>())
        {
            if (vision.ToString().Equals(text.Trim(), StringComparison.OrdinalIgnoreCase)) return vision;
        }

        throw new InputProblemException(new InputProblem($"\"{text}\" is no kind of colour vision.", "--vision", "Use protan, deutan or tritan."));
    }
}
