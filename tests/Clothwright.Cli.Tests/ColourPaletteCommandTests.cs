using SkiaSharp;

namespace Clothwright.Cli.Tests;

public class ColourPaletteCommandTests
{
    [Fact]
    public void The_colours_of_a_picture_are_told_with_shares_and_distances()
    {
        using var folder = new PassingFolder();
        Write(folder.File("cone.png"), "#5b2a86", "#e86a17");
        CommandLine run = CommandLine.Run("colour", "palette", folder.File("cone.png"), "--json");

        Assert.Equal(ExitCode.Done, run.ExitCode);
        System.Text.Json.JsonElement[] colours = [.. run.Json.GetProperty("colours").EnumerateArray()];
        Assert.Equal(["#5b2a86", "#e86a17"], colours.Select(c => c.GetProperty("srgb").GetString()));
        Assert.Equal(0.7, colours[0].GetProperty("share").GetDouble(), 0.01);
        // The pair stands in the table of published colours as D01.
        Assert.Equal(54.315, colours[0].GetProperty("deltaE2000")[1].GetDouble(), 0.05);
        Assert.False(run.Json.GetProperty("lightTakenOut").GetBoolean());
    }

    [Fact]
    public void The_nearest_yarn_of_a_worksheet_is_named()
    {
        using var folder = new PassingFolder();
        Write(folder.File("cone.png"), "#2f5f77", "#2f5f77");
        CommandLine run = CommandLine.Run("colour", "palette", folder.File("cone.png"), "--worksheet", TestKit.Repository.PathOf("samples", "reedbed-scarves.json"), "--most", "1");

        Assert.Contains("nearest: 8/2 bamboo, tide blue", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--most", "0")]
    [InlineData("--white", "9000,10")]
    [InlineData("--grey", "here")]
    [InlineData("--area", "1,1 4,4")]
    public void What_cannot_be_looked_at_is_pointed_at(string option, string value)
    {
        using var folder = new PassingFolder();
        Write(folder.File("cone.png"), "#5b2a86", "#e86a17");
        CommandLine run = CommandLine.Run("colour", "palette", folder.File("cone.png"), option, value);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains($"clothwright: {option}", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void White_and_grey_together_are_refused()
    {
        using var folder = new PassingFolder();
        Write(folder.File("cone.png"), "#5b2a86", "#e86a17");
        Assert.Equal(ExitCode.BadInput, CommandLine.Run("colour", "palette", folder.File("cone.png"), "--white", "3,3", "--grey", "4,4").ExitCode);
    }

    private static void Write(string path, string left, string right)
    {
        using var bitmap = new SKBitmap(200, 120);
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(SKColor.Parse(left));
            using var paint = new SKPaint { Color = SKColor.Parse(right) };
            canvas.DrawRect(140, 0, 60, 120, paint);
        }

        using SKData png = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        File.WriteAllBytes(path, png.ToArray());
    }
}
