using System.CommandLine;
using Clothwright.Cli.Reports;
using Clothwright.Core.Photographs;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;
using Clothwright.Drawing.Images;

namespace Clothwright.Cli.Commands;

/// <summary><c>clothwright count</c>: ends and picks, wraps, or the size of a piece, from a photograph.</summary>
internal sealed class CountCommand : ReportCommand
{
    private readonly Argument<string> _photo = new("photo") { Description = "Photograph (JPEG or PNG) of a swatch, the warp up and down, a ruler or a bank card beside it." };
    private readonly Option<string?> _scale = new("--scale") { Description = "A length on the ruler and the pixels it covers, for example 50mm=612px." };
    private readonly Option<string?> _card = new("--card") { Description = "Instead: the four corners of a bank card in the cloth's plane, \"x,y x,y x,y x,y\" in pixels around it; takes out a slanted camera." };
    private readonly Option<string?> _area = new("--area") { Description = "The square to look at: two opposite corners, \"x,y x,y\" in pixels; the middle of the picture if left out." };
    private readonly Option<string> _warp = new("--warp") { Description = "up or across: how the warp runs in the picture.", DefaultValueFactory = _ => "up" };
    private readonly Option<string?> _wraps = new("--wraps") { Description = "Count wraps on a rod instead, between two places in the middle of the rod, \"x,y x,y\" in pixels." };
    private readonly Option<double> _band = new("--band") { Description = "With --wraps: how wide a band along the rod is looked at, pixels.", DefaultValueFactory = _ => 40 };
    private readonly Option<string?> _piece = new("--piece") { Description = "Measure a whole piece instead, around a place near its middle, \"x,y\" in pixels." };
    private readonly Option<string?> _units = new("--units") { Description = "metric or customary." };

    /// <summary>The command.</summary>
    public CountCommand()
        : base("count", "Counts ends and picks in a photograph of cloth, and says how sure it is.")
    {
        Arguments.Add(_photo);
        foreach (Option option in (Option[])[_scale, _card, _area, _warp, _wraps, _band, _piece, _units]) Options.Add(option);
    }

    /// <inheritdoc />
    protected override Report Make(ParseResult input)
    {
        PhotoScale scale = Scale(input.GetValue(_scale), input.GetValue(_card));
        UnitStyle units = input.GetValue(_units) is { } asked ? UnitWord.Read(asked) : UnitStyle.Metric;
        string name = input.GetValue(_photo)!;
        if (input.GetValue(_wraps) is not null && input.GetValue(_piece) is not null)
        {
            throw new InputProblemException(new InputProblem("--wraps and --piece ask for two things.", "--piece", "Give one of them."));
        }

        Photograph photo = PhotographFile.Read(InputFile.Read(name)).At(Path.GetFileName(name));
        if (input.GetValue(_wraps) is { } wraps)
        {
            PhotoPoint[] ends = PhotoScaleText.Places(wraps, 2, "--wraps").Value;
            return CountReport.Of(WrapCounter.Count(photo, scale, new PhotoBand(ends[0], ends[1], input.GetValue(_band))).At("--wraps"), units);
        }

        if (input.GetValue(_piece) is { } piece)
        {
            return CountReport.Of(PieceMeasure.Measure(photo, scale, PhotoScaleText.Places(piece, 1, "--piece").Value[0]).At(Path.GetFileName(name)), units);
        }

        PhotoArea area = input.GetValue(_area) is { } corners ? Area(PhotoScaleText.Places(corners, 2, "--area").Value) : PhotoArea.MiddleOf(photo);
        ClothCount count = ClothCounter.Count(photo, scale, area, CountDetail.Full).At(Path.GetFileName(name));
        return CountReport.Of(WarpRunsUp(input.GetValue(_warp)!) ? count : count.Turned(), units);
    }

    private static PhotoScale Scale(string? scale, string? card) => (scale, card) switch
    {
        ({ } text, null) => PhotoScaleText.Parse(text, "--scale").Value,
        (null, { } text) => PhotoScale.FromCard(PhotoScaleText.Places(text, 4, "--card").Value).At("--card"),
        _ => throw new InputProblemException(new InputProblem(
            scale is null ? "Nothing says how large the picture is." : "--scale and --card both say how large the picture is.",
            "--scale",
            "Give one of them: --scale 50mm=612px, or --card with the four corners of a bank card.")),
    };

    private static PhotoArea Area(PhotoPoint[] corners) => new(
        new PhotoPoint((corners[0].X + corners[1].X) / 2, (corners[0].Y + corners[1].Y) / 2),
        Math.Min(Math.Abs(corners[0].X - corners[1].X), Math.Abs(corners[0].Y - corners[1].Y)));

    private static bool WarpRunsUp(string word) => word.Trim().ToLowerInvariant() switch
    {
        "up" => true,
        "across" => false,
        _ => throw new InputProblemException(new InputProblem($"\"{word}\" is no way for a warp to run.", "--warp", "Use up or across.")),
    };
}
