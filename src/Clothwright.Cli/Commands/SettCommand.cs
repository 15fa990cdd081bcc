using System.Collections.Immutable;
using System.CommandLine;
using Clothwright.Cli.Cloths;
using Clothwright.Cli.Reports;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright sett</c>: how close to set a yarn in a weave for a purpose.</summary>
internal sealed class SettCommand : ReportCommand
{
    private readonly Option<string> _yarn = new("--yarn") { Description = "Warp yarn: a count or a label, for example 8/2 or \"400 m / 100 g\".", Required = true };
    private readonly Option<string?> _system = new("--system") { Description = "Count system of the yarns (see yarn convert)." };
    private readonly Option<string> _fibre = new("--fibre") { Description = "Fibre, for example cotton, bamboo-viscose, merino, or a blend \"wool 80 %, silk 20 %\".", Required = true };
    private readonly Option<string?> _construction = new("--construction") { Description = $"How the yarns are made: {ConstructionWord.All}; spun if left out." };
    private readonly Option<string?> _wraps = new("--wraps") { Description = "Wraps touching on a ruler, for example 33/in; takes the place of the diameter by rule." };
    private readonly Option<string?> _weft = new("--weft") { Description = "Weft yarn, where it is another." };
    private readonly Option<string?> _weftSystem = new("--weft-system") { Description = "Count system of the weft, where it is another." };
    private readonly Option<string?> _weftFibre = new("--weft-fibre") { Description = "Fibre of the weft, where it is another." };
    private readonly Option<int> _weftStrands = new("--weft-strands") { Description = "Strands of the weft side by side in one pick.", DefaultValueFactory = _ => 1 };
    private readonly Option<string> _weave = new("--weave") { Description = "Weave by name, draft in notation, or file.", Required = true };
    private readonly Option<string> _purpose = new("--purpose") { Description = "airy, drape, everyday, firm, weft-faced or warp-faced.", DefaultValueFactory = _ => "everyday" };
    private readonly Option<int> _layers = new("--layers") { Description = "Layers woven one above the other: 2 for double width or a tube.", DefaultValueFactory = _ => 1 };
    private readonly Option<string?> _width = new("--width") { Description = "Width of the cloth on the loom, for example 110cm; a wide cloth is set more open." };
    private readonly Option<bool> _fulled = new("--fulled") { Description = "The cloth is to be felted by hand." };
    private readonly Option<string?> _reeds = new("--reeds") { Description = "Reeds she owns, for example 8,10,12 (dents per inch) or 40/10 (per 10 cm)." };
    private readonly Option<string?> _heddles = new("--heddles") { Description = "Rigid heddles she owns, for example 10,10 or 7.5,7.5,7.5." };

    /// <summary>The command.</summary>
    public SettCommand()
        : base("sett", "How close to set a yarn in a weave: limits by method, the sett for the purpose, reeds that give it.")
    {
        foreach (Option option in (Option[])[_yarn, _system, _fibre, _construction, _wraps, _weft, _weftSystem, _weftFibre, _weftStrands, _weave, _purpose, _layers, _width, _fulled, _reeds, _heddles])
        {
            Options.Add(option);
        }
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        var warpWords = new YarnWords(
            input.GetValue(_yarn)!,
            "--yarn",
            SizeArgument.System(input.GetValue(_system)),
            input.GetValue(_fibre)!,
            "--fibre",
            input.GetValue(_construction) is { } made ? ConstructionWord.Read(made, "--construction") : YarnConstruction.Spun,
            YarnWords.Undyed);
        Yarn warp = warpWords.ToYarn("warp") with
        {
            MeasuredWraps = input.GetValue(_wraps) is { } wraps
                ? Derived.Given("wraps measured", SettText.Parse(wraps, "--wraps").Value, Source.Measured)
                : null,
        };
        int layers = input.GetValue(_layers);
        var advice = SettAdvice.For(SettQuestion.About(
            warp,
            WeaveSource.Read(input.GetValue(_weave)!, "--weave", out _).Draft.Drawdown(),
            ClothPurposeText.Parse(input.GetValue(_purpose)!).At("--purpose"),
            Weft(input, warpWords, warp)) with
        {
            Layers = layers is >= 1 and <= 4 ? layers : throw Refused("--layers", layers, "Give 1 for a single cloth or 2 for double width, at most 4."),
            Width = input.GetValue(_width) is { } width ? LengthText.Parse(width, "--width").Value : null,
            ToBeFulled = input.GetValue(_fulled),
            Reeds = [.. Split(input.GetValue(_reeds)).Select(r => Reed.Parse(r).At("--reeds"))],
            Heddles = [.. Split(input.GetValue(_heddles)).GroupBy(h => h).Select(g => RigidHeddle.Parse(g.Key, g.Count()).At("--heddles"))],
        });
        return new Report(SettAdviceText.Of(advice), SettAdviceJson.Of(advice));
    }

    // The warp yarn itself, so that wraps counted of it serve the weft too, unless something about the weft is said.
    private Yarn Weft(ParseResult input, YarnWords warpWords, Yarn warp)
    {
        YarnWords words = warpWords with
        {
            Size = input.GetValue(_weft) ?? warpWords.Size,
            SizeOption = input.GetValue(_weft) is null ? warpWords.SizeOption : "--weft",
            System = input.GetValue(_weftSystem) is { } system ? CountSystems.Parse(system, "--weft-system").Value : warpWords.System,
            Fibre = input.GetValue(_weftFibre) ?? warpWords.Fibre,
            FibreOption = input.GetValue(_weftFibre) is null ? warpWords.FibreOption : "--weft-fibre",
        };
        int strands = input.GetValue(_weftStrands);
        if (strands is < 1 or > 12) throw Refused("--weft-strands", strands, "Give 1 to 12.");
        Yarn one = words == warpWords ? warp : words.ToYarn("weft");
        return YarnStrands.SideBySide(one, strands);
    }

    private static InputProblemException Refused(string option, int given, string mend) =>
        new(new InputProblem($"{given.ToString(System.Globalization.CultureInfo.InvariantCulture)} cannot be used here.", option, mend));

    private static string[] Split(string? list) =>
        list?.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) ?? [];
}
