using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Cli.Reports;
using Clothwright.Core.Colours;
using Clothwright.Core.Photographs;
using Clothwright.Core.Photographs.Palettes;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;
using Clothwright.Drawing.Images;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright colour palette</c>: the colours of a photograph of a cone or of cloth.</summary>
internal sealed class ColourPaletteCommand : ReportCommand
{
    private readonly Argument<string> _photo = new("photo") { Description = "Photograph (JPEG or PNG) of a cone, a skein or a cloth, white paper or a grey card beside it." };
    private readonly Option<string?> _white = new("--white") { Description = "A place on the white paper, \"x,y\" in pixels; takes the colour of the light out." };
    private readonly Option<string?> _grey = new("--grey") { Description = "Instead: a place on a grey card (18 %), \"x,y\" in pixels." };
    private readonly Option<string?> _area = new("--area") { Description = "The part to look at: two opposite corners, \"x,y x,y\" in pixels; the whole picture if left out." };
    private readonly Option<int> _most = new("--most") { Description = "How many colours are told at most.", DefaultValueFactory = _ => PaletteQuestion.MostColours };
    private readonly Option<string?> _worksheet = new("--worksheet") { Description = "A worksheet: the yarn on its shelf nearest to each colour is named." };

    /// <summary>The command.</summary>
    public ColourPaletteCommand()
        : base("palette", "The colours of a photographed cone, skein or cloth, how much of each, and how far apart.")
    {
        Arguments.Add(_photo);
        foreach (Option option in (Option[])[_white, _grey, _area, _most, _worksheet]) Options.Add(option);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        int most = input.GetValue(_most);
        if (most is < 1 or > PaletteQuestion.MostColours)
        {
            throw new InputProblemException(new InputProblem($"{most} colours cannot be told.", "--most", $"Give a number from 1 to {PaletteQuestion.MostColours}."));
        }

        (string? white, string? grey) = (input.GetValue(_white), input.GetValue(_grey));
        if (white is not null && grey is not null) throw new InputProblemException(new InputProblem("--white and --grey both say what is neutral.", "--grey", "Give one of them."));
        string name = input.GetValue(_photo)!;
        Photograph photo = PhotographFile.Read(InputFile.Read(name)).At(Path.GetFileName(name));
        PhotoPoint[]? area = input.GetValue(_area) is { } corners ? PhotoScaleText.Places(corners, 2, "--area").Value : null;
        var question = new PaletteQuestion
        {
            Area = area is null ? null : (area[0], area[1]),
            NeutralPlace = (white ?? grey) is { } place ? PhotoScaleText.Places(place, 1, white is null ? "--grey" : "--white").Value[0] : null,
            NeutralReflectanceShare = white is null ? LightCorrection.GreyCardReflectanceShare : LightCorrection.PaperReflectanceShare,
            Most = most,
        };
        Parsed<PhotoPalette> read = PaletteReader.Read(photo, question);
        if (!read.TryGet(out PhotoPalette? palette)) throw new InputProblemException(read.Problem! with { Where = Place(read.Problem!.Where, name, white) });
        ImmutableArray<Yarn> shelf = input.GetValue(_worksheet) is { } worksheet ? [.. WorksheetFile.Plan(worksheet).Plan.Request.Shelf] : [];
        Yarn?[] nearest = [.. palette.Colours.Select(c => shelf.IsEmpty ? null : shelf.MinBy(y => Difference(y, c)))];
        return new Report(Text(palette, nearest), Json(palette, nearest));
    }

    private static string Place(string where, string photo, string? white) => where switch
    {
        "neutral" => white is null ? "--grey" : "--white",
        "area" => "--area",
        _ => Path.GetFileName(photo),
    };

    private static double Difference(Yarn yarn, PaletteColour colour) => ColourDifference.Ciede2000(CieLab.From(yarn.Colour), colour.Lab);

    private static string Text(PhotoPalette palette, Yarn?[] nearest)
    {
        var text = new StringBuilder();
        for (int i = 0; i < palette.Colours.Length; i++)
        {
            PaletteColour colour = palette.Colours[i];
            string apart = i == 0 ? "" : $", {palette.Between(0, i):0.0} from the first";
            text.AppendLine($"{colour.Codes}  {colour.AreaShare * 100,3:0} %  {ColourWords.Of(colour.Light)}; its parts differ by {colour.Spread:0.0}{apart}");
            if (nearest[i] is { } yarn) text.AppendLine($"               nearest: {yarn.Name}, {Difference(yarn, colour):0.0} away");
        }

        text.Append("\nDifferences are CIEDE2000; about 1 is just seen side by side.");
        foreach (string note in palette.Notes) text.Append($"\n· {note}");
        return text.ToString();
    }

    private static JsonObject Json(PhotoPalette palette, Yarn?[] nearest) => new()
    {
        ["colours"] = new JsonArray([.. palette.Colours.Select((c, i) => (JsonNode)new JsonObject
        {
            ["srgb"] = c.Codes.ToString(),
            ["lab"] = new JsonArray(c.Lab.L, c.Lab.A, c.Lab.B),
            ["words"] = ColourWords.Of(c.Light),
            ["share"] = c.AreaShare,
            ["spreadDeltaE2000"] = c.Spread,
            ["deltaE2000"] = new JsonArray([.. palette.Colours.Select((_, j) => (JsonNode)palette.Between(i, j))]),
            ["nearestYarn"] = nearest[i] is { } yarn ? new JsonObject { ["id"] = yarn.Id, ["name"] = yarn.Name, ["deltaE2000"] = Difference(yarn, c) } : null,
        })]),
        ["lightTakenOut"] = palette.LightKnown,
        ["burntShare"] = palette.BurntShare,
        ["darkShare"] = palette.DarkShare,
        ["notes"] = new JsonArray([.. palette.Notes.Select(n => (JsonNode)n)]),
    };
}
