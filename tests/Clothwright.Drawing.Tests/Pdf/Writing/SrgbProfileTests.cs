using Clothwright.Drawing.Pdf.Writing;
using SkiaSharp;

namespace Clothwright.Drawing.Tests.Pdf.Writing;

public class SrgbProfileTests
{
    // Read by another implementation of ISO 15076-1, which also holds sRGB of its own.
    [Fact]
    public void Another_reader_takes_the_profile_for_srgb()
    {
        using SKColorSpace? read = SKColorSpace.CreateIcc(SrgbProfile.Bytes());

        Assert.NotNull(read);
        Assert.True(read.GammaIsCloseToSrgb);
        Assert.True(read.ToColorSpaceXyz(out SKColorSpaceXyz matrix));
        float[] expected = SKColorSpaceXyz.Srgb.Values;
        Assert.All(matrix.Values.Zip(expected), v => Assert.Equal(v.Second, v.First, 0.0005f)); // numbers of 16 fraction bits, primaries given to 4 places
    }
}
