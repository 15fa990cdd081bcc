using SkiaSharp;

namespace Clothwright.Cli.Tests;

public class ColourSimulateCommandTests
{
    [Theory]
    // Rows C07, C10 and C17 of the table of published colours.
    [InlineData("#e86a17", "protan", "1", "#8f7d00")]
    [InlineData("#c4167f", "protan", "1", "#3f5581")]
    [InlineData("#e86a17", "protan", "0.6", "#ad7c00")]
    public void Every_dot_is_seen_as_the_published_colour(string colour, string vision, string severity, string seen)
    {
        using var folder = new PassingFolder();
        Write(folder.File("dye.png"), SKColor.Parse(colour));
        CommandLine run = CommandLine.Run("colour", "simulate", folder.File("dye.png"), "--vision", vision, "--severity", severity, "--json");

        Assert.Equal(ExitCode.Done, run.ExitCode);
        using SKBitmap picture = SKBitmap.Decode(run.Json.GetProperty("written").GetString());
        Assert.Equal((3, 2), (picture.Width, picture.Height));
        Assert.All(picture.Pixels, p => Assert.Equal(SKColor.Parse(seen), p));
    }

    [Fact]
    public void The_picture_is_written_beside_the_first_with_the_vision_in_its_name()
    {
        using var folder = new PassingFolder();
        Write(folder.File("dye.png"), SKColors.Teal);
        CommandLine run = CommandLine.Run("colour", "simulate", folder.File("dye.png"), "--vision", "Tritan");

        Assert.True(File.Exists(folder.File("dye-tritan.png")));
        Assert.Contains("ask", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_simulated_is_refused_and_nothing_is_written()
    {
        using var folder = new PassingFolder();
        Write(folder.File("dye.png"), SKColors.Teal);
        File.WriteAllText(folder.File("words.png"), "no picture");

        AssertRefused("--vision", folder.File("dye.png"), "--vision", "owl");
        AssertRefused("--severity", folder.File("dye.png"), "--vision", "deutan", "--severity", "2");
        AssertRefused("--out", folder.File("dye.png"), "--vision", "deutan", "--out", folder.File("dye.png"));
        AssertRefused("words.png", folder.File("words.png"), "--vision", "deutan");
        AssertRefused("file", folder.File("nowhere.png"), "--vision", "deutan");
        Assert.Equal(2, Directory.GetFiles(folder.Path).Length);
    }

    private static void AssertRefused(string place, params string[] args)
    {
        CommandLine run = CommandLine.Run(["colour", "simulate", .. args]);
        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.StartsWith($"clothwright: {place}: ", run.Error, StringComparison.Ordinal);
    }

    private static void Write(string path, SKColor colour)
    {
        using var bitmap = new SKBitmap(3, 2);
        bitmap.Erase(colour);
        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        File.WriteAllBytes(path, data.ToArray());
    }
}
