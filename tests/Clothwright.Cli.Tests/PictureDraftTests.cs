using Clothwright.Core.Quantities;
using Clothwright.Interchange.Drafts;
using SkiaSharp;

namespace Clothwright.Cli.Tests;

/// <summary>A file that is a picture is read as one, whatever its ending.</summary>
public sealed class PictureDraftTests
{
    [Fact]
    public void A_picture_of_a_twill_is_the_draft_of_a_twill() => InFile(Picture("110011/011001/001100/100110"), path =>
    {
        DraftFileReading reading = DraftFile.Read(path);
        Assert.Equal("110011/011001/001100/100110", reading.Woven.Draft.Drawdown().ToString());
        Assert.Equal((4, 4), (reading.Woven.Draft.Shafts, reading.Woven.Draft.Treadles));
        Assert.Equal("The picture shows 6 ends and 4 picks; see that this is so.", Assert.Single(reading.Warnings));
    });

    [Fact]
    public void A_picture_of_nothing_is_refused_by_the_name_of_its_file() => InFile(Picture("00/00"), path =>
    {
        InputProblem problem = Assert.Throws<InputProblemException>(() => DraftFile.Read(path)).Problem;
        Assert.Equal(Path.GetFileName(path), problem.Where);
        Assert.Contains("one tone", problem.What, StringComparison.Ordinal);
    });

    // First pick at the bottom, twelve pixels a crossing.
    private static byte[] Picture(string drawdown)
    {
        string[] picks = drawdown.Split('/');
        using var bitmap = new SKBitmap(12 * picks[0].Length, 12 * picks.Length);
        for (int y = 0; y < bitmap.Height; y++)
        {
            for (int x = 0; x < bitmap.Width; x++) bitmap.SetPixel(x, y, picks[picks.Length - 1 - y / 12][x / 12] == '1' ? SKColors.Black : SKColors.White);
        }

        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    private static void InFile(byte[] bytes, Action<string> test)
    {
        string path = Path.Combine(Path.GetTempPath(), $"{Path.GetRandomFileName()}.wif");
        try
        {
            File.WriteAllBytes(path, bytes);
            test(path);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
