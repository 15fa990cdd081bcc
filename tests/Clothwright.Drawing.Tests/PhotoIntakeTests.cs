using Clothwright.Core.Quantities;
using Clothwright.Drawing.Photos;
using SkiaSharp;

namespace Clothwright.Drawing.Tests;

public class PhotoIntakeTests
{
    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Webp)]
    public void A_photo_is_written_anew_as_a_jpeg_of_modest_size(SKEncodedImageFormat format)
    {
        StoredPhoto photo = PhotoIntake.Take(Picture(2400, 1200, format)).Value;
        Assert.Equal((1600, 800), (photo.WidthPixels, photo.HeightPixels));
        using SKBitmap read = SKBitmap.Decode(photo.Jpeg);
        Assert.Equal((1600, 800), (read.Width, read.Height));
        // The left half is tide blue: within the small loss of a JPEG.
        SKColor blue = read.GetPixel(300, 400);
        Assert.InRange(blue.Red, 0x2f - 6, 0x2f + 6);
        Assert.InRange(blue.Blue, 0x77 - 6, 0x77 + 6);
    }

    [Fact]
    public void A_photo_held_sideways_is_turned_upright_and_the_notes_of_the_camera_are_gone()
    {
        // EXIF 2.3, tag 0x0112 Orientation = 6: the first row stands at the right, so that the picture is turned a quarter right.
        byte[] sideways = WithOrientation(Picture(400, 200, SKEncodedImageFormat.Jpeg), 6);
        StoredPhoto photo = PhotoIntake.Take(sideways).Value;
        Assert.Equal((200, 400), (photo.WidthPixels, photo.HeightPixels));
        using SKBitmap read = SKBitmap.Decode(photo.Jpeg);
        Assert.InRange(read.GetPixel(100, 60).Blue, 0x77 - 8, 0x77 + 8);
        Assert.Equal(-1, photo.Jpeg.AsSpan().IndexOf("Exif"u8));
    }

    [Fact]
    public void What_is_no_photo_is_refused()
    {
        Assert.Contains("no photo", PhotoIntake.Take("<svg onload='alert(1)'/>"u8.ToArray()).Problem!.What, StringComparison.Ordinal);
        Assert.Contains("no photo", PhotoIntake.Take([]).Problem!.What, StringComparison.Ordinal);
        byte[] whole = Picture(400, 200, SKEncodedImageFormat.Png);
        InputProblem cut = PhotoIntake.Take(whole[..(whole.Length / 2)]).Problem!;
        Assert.Contains("damaged", cut.What, StringComparison.Ordinal);
    }

    private static byte[] Picture(int width, int height, SKEncodedImageFormat format)
    {
        using var bitmap = new SKBitmap(width, height);
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(new SKColor(0xe9, 0xdf, 0xc9));
            using var blue = new SKPaint { Color = new SKColor(0x2f, 0x5f, 0x77) };
            canvas.DrawRect(0, 0, width / 2f, height, blue);
        }

        using SKData data = bitmap.Encode(format, 95);
        return data.ToArray();
    }

    // An APP1 segment with one tag, little-endian, behind the two bytes that begin a JPEG.
    private static byte[] WithOrientation(byte[] jpeg, byte orientation)
    {
        byte[] exif = [0xFF, 0xE1, 0, 34, (byte)'E', (byte)'x', (byte)'i', (byte)'f', 0, 0, (byte)'I', (byte)'I', 42, 0, 8, 0, 0, 0, 1, 0, 0x12, 0x01, 3, 0, 1, 0, 0, 0, orientation, 0, 0, 0, 0, 0, 0, 0];
        return [.. jpeg[..2], .. exif, .. jpeg[2..]];
    }
}
