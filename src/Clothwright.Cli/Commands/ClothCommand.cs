using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json.Nodes;
using Clothwright.Cli.Cloths;
using Clothwright.Cli.Reports;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using Clothwright.Drawing.Faces;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Http;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright cloth</c>: what a cloth will be like.</summary>
internal sealed class ClothCommand : ReportCommand
{
    private readonly Argument<string> _file = new("file") { Description = "Worksheet (.json), draft file, weave by name, or draft in notation; a draft needs --yarn and --fibre." };
    private readonly Option<string?> _yarn = new("--yarn") { Description = "Warp yarn: a count or a label, for example 8/2 or \"400 m / 100 g\"." };
    private readonly Option<string?> _system = new("--system") { Description = "Count system of the yarns (see yarn convert)." };
    private readonly Option<string?> _fibre = new("--fibre") { Description = "Fibre of the warp, for example cotton, or a blend \"wool 80 %, silk 20 %\"." };
    private readonly Option<string?> _construction = new("--construction") { Description = "How the yarns are made; spun if left out." };
    private readonly Option<string?> _colour = new("--colour") { Description = "Colour of the warp, for example #3b7a78; as the draft file says, or undyed." };
    private readonly Option<string?> _weft = new("--weft") { Description = "Weft yarn, where it is another." };
    private readonly Option<string?> _weftSystem = new("--weft-system") { Description = "Count system of the weft, where it is another." };
    private readonly Option<string?> _weftFibre = new("--weft-fibre") { Description = "Fibre of the weft, where it is another." };
    private readonly Option<string?> _weftColour = new("--weft-colour") { Description = "Colour of the weft." };
    private readonly Option<string?> _ends = new("--ends") { Description = "Sett, for example 20/in or 8/cm; as advised for --purpose if left out." };
    private readonly Option<string?> _picks = new("--picks") { Description = "Picks, for example 18/in; what suits the ends if left out." };
    private readonly Option<string> _at = new("--at") { Description = "Where the setts were counted: cloth (washed, at rest) or loom (reed and beat).", DefaultValueFactory = _ => "cloth" };
    private readonly Option<string> _purpose = new("--purpose") { Description = "airy, drape, everyday, firm, weft-faced or warp-faced; used where a sett is left out.", DefaultValueFactory = _ => "everyday" };
    private readonly Option<string> _face = new("--face") { Description = "front or back: the side to picture.", DefaultValueFactory = _ => "front" };
    private readonly Option<int> _piece = new("--piece") { Description = "Of a worksheet: the piece to picture, from 1.", DefaultValueFactory = _ => 1 };
    private readonly Option<string?> _explain = new("--explain") { Description = "Show the working of one figure, for example thickness." };
    private readonly Option<string?> _out = new("--out") { Description = "Picture of the cloth at true size to write, a .png file." };
    private readonly Option<string?> _units = new("--units") { Description = "metric or customary." };

    /// <summary>The command.</summary>
    public ClothCommand()
        : base("cloth", "What a cloth will be like: mass, thickness, cover, crimp, hand, colour and look of both sides.")
    {
        Arguments.Add(_file);
        foreach (Option option in (Option[])[_yarn, _system, _fibre, _construction, _colour, _weft, _weftSystem, _weftFibre, _weftColour, _ends, _picks, _at, _purpose, _face, _piece, _explain, _out, _units])
        {
            Options.Add(option);
        }
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        Face face = Word(input.GetValue(_face)!, "--face", ("front", Face.Front), ("face", Face.Front), ("back", Face.Back));
        UnitStyle units = UnitStyle.Metric;
        string file = input.GetValue(_file)!;
        ImmutableArray<ForeseenCloth> cloths = file.EndsWith(".json", StringComparison.OrdinalIgnoreCase)
            ? PlannedCloths.Of(file, out units)
            : [Drafted(input, file)];
        if (input.GetValue(_units) is { } asked) units = UnitWord.Read(asked);
        int piece = input.GetValue(_piece);
        if (piece < 1 || piece > cloths.Length)
        {
            throw new InputProblemException(new InputProblem($"There is no piece {piece}.", "--piece", $"Give 1 to {cloths.Length}."));
        }

        if (input.GetValue(_explain) is { } figure) return Explained(cloths[piece - 1], figure, units);
        string text = ClothText.Of(cloths, face == Face.Back, units);
        if (input.GetValue(_out) is { } path)
        {
            WritePicture(cloths[piece - 1], face, path);
            text += $"\n\nWrote {path}: the {(face == Face.Back ? "back" : "front")} at true size, 300 dots per inch.";
        }

        return new Report(text, ClothJson.Of(cloths));
    }

    private ForeseenCloth Drafted(ParseResult input, string file)
    {
        WovenDraft woven = WeaveSource.Read(file, "file", out _);
        string yarn = Needed(input.GetValue(_yarn), "--yarn", "Give the warp yarn, for example --yarn 8/2 --system cotton.");
        string fibre = Needed(input.GetValue(_fibre), "--fibre", "Name the fibre, for example --fibre cotton.");
        CountSystem? system = SizeArgument.System(input.GetValue(_system));
        YarnConstruction made = input.GetValue(_construction) is { } word ? ConstructionWord.Read(word, "--construction") : YarnConstruction.Spun;
        string? colour = input.GetValue(_colour);
        string? weftColour = input.GetValue(_weftColour);
        var warp = new YarnWords(yarn, "--yarn", system, fibre, "--fibre", made, colour is null ? YarnWords.Undyed : SrgbColour.Parse(colour).At("--colour"));
        YarnWords weft = warp with { Colour = weftColour is null ? warp.Colour : SrgbColour.Parse(weftColour).At("--weft-colour") };
        if (input.GetValue(_weft) is { } weftSize) weft = weft with { Size = weftSize, SizeOption = "--weft" };
        if (input.GetValue(_weftSystem) is { } weftSystem) weft = weft with { System = CountSystems.Parse(weftSystem, "--weft-system").Value };
        if (input.GetValue(_weftFibre) is { } weftFibre) weft = weft with { Fibre = weftFibre, FibreOption = "--weft-fibre" };
        return new DraftedCloth(woven, warp.ToYarn("warp"), weft.ToYarn("weft"))
        {
            Ends = input.GetValue(_ends) is { } ends ? SettText.Parse(ends, "--ends").Value : null,
            Picks = input.GetValue(_picks) is { } picks ? SettText.Parse(picks, "--picks").Value : null,
            Purpose = ClothPurposeText.Parse(input.GetValue(_purpose)!).At("--purpose"),
            CountedOnLoom = Word(input.GetValue(_at)!, "--at", ("cloth", false), ("loom", true)),
            OwnColours = colour is not null || weftColour is not null,
        }.Foresee();
    }

    private static Report Explained(ForeseenCloth cloth, string figure, UnitStyle units)
    {
        Working? found = cloth.Figures.FirstOrDefault(f => f.Name.Equals(figure.Trim(), StringComparison.OrdinalIgnoreCase)).Working;
        return found is null
            ? throw new InputProblemException(new InputProblem($"The cloth has no figure called \"{figure}\".", "--explain", $"Use one of {string.Join(", ", cloth.Figures.Select(f => f.Name))}."))
            : new Report(WorkingText.Write(found, units), new JsonObject { ["figure"] = found.Label, ["working"] = WorkingReport.Of(found) });
    }

    private static void WritePicture(ForeseenCloth cloth, Face face, string path)
    {
        if (!path.EndsWith(".png", StringComparison.OrdinalIgnoreCase))
        {
            throw new InputProblemException(new InputProblem($"\"{path}\" is no name for a picture of the cloth.", "--out", "Give the file the ending .png."));
        }

        using var stream = new MemoryStream();
        ClothPicture.Png(cloth.Look, stream, face);
        OutputFolder.WriteFile(path, stream.ToArray());
    }

    private static string Needed(string? given, string option, string mend) => given
        ?? throw new InputProblemException(new InputProblem("A draft alone makes no cloth: its yarn is not known.", option, mend));

    private static T Word<T>(string text, string option, params (string Word, T Value)[] words)
    {
        foreach ((string word, T value) in words)
        {
            if (word.Equals(text.Trim(), StringComparison.OrdinalIgnoreCase)) return value;
        }

        throw new InputProblemException(new InputProblem($"\"{text}\" is not known here.", option, $"Use {words[0].Word} or {words[^1].Word}."));
    }
}
