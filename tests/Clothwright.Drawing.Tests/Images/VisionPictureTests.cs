using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Drawing.Images;
using SkiaSharp;

namespace Clothwright.Drawing.Tests.Images;

public sealed class VisionPictureTests
{
    [Fact]
    public void Usual_vision_leaves_a_picture_as_it_is()
    {
        byte[] picture = Picture(SKColors.Teal, SKColors.Orange);
        using SKBitmap seen = SKBitmap.Decode(VisionPicture.Seen(picture, ColourVision.Deutan, 0).Value);
        Assert.Equal([SKColors.Teal, SKColors.Orange], seen.Pixels);
    }

    [Theory]
    // Rows C01 and C13 of the table of published colours.
    [InlineData("#ff0000", "#6d5f00")]
    [InlineData("#3b7a78", "#737578")]
    public void Each_dot_is_changed_by_itself(string colour, string protan)
    {
        byte[] picture = Picture(SKColor.Parse(colour), SKColors.White);
        using SKBitmap seen = SKBitmap.Decode(VisionPicture.Seen(picture, ColourVision.Protan, 1).Value);
        Assert.Equal([SKColor.Parse(protan), SKColors.White], seen.Pixels);
    }

    [Fact]
    public void What_is_transparent_stays_so()
    {
        byte[] picture = Picture(SKColors.Transparent, new SKColor(255, 0, 0, 128));
        using SKBitmap seen = SKBitmap.Decode(VisionPicture.Seen(picture, ColourVision.Protan, 1).Value);
        Assert.Equal([0, 128], seen.Pixels.Select(p => (int)p.Alpha));
    }

    [Fact]
    public void What_is_no_picture_is_refused()
    {
        byte[] picture = Picture(SKColors.Teal, SKColors.Orange);
        InputProblem[] problems =
        [
            VisionPicture.Seen([], ColourVision.Protan, 1).Problem!,
            VisionPicture.Seen([1, 2, 3], ColourVision.Protan, 1).Problem!,
            VisionPicture.Seen(picture.AsSpan(0, picture.Length / 2), ColourVision.Protan, 1).Problem!,
        ];
        Assert.All(problems, p => Assert.Equal("picture", p.Where));
        Assert.Throws<ArgumentOutOfRangeException>(() => VisionPicture.Seen(picture, ColourVision.Protan, double.NaN));
    }

    private static byte[] Picture(SKColor left, SKColor right)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(2, 1, SKColorType.Rgba8888, SKAlphaType.Unpremul));
        bitmap.SetPixel(0, 0, left);
        bitmap.SetPixel(1, 0, right);
        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
