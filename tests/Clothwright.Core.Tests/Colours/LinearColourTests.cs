using Clothwright.Core.Colours;
using CsCheck;

namespace Clothwright.Core.Tests.Colours;

public class LinearColourTests
{
    [Fact]
    public void Every_code_comes_back_from_its_light()
    {
        for (int code = 0; code <= 255; code++)
        {
            var colour = new SrgbColour((byte)code, (byte)(255 - code), (byte)code);
            Assert.Equal(colour, LinearColour.From(colour).ToSrgb());
        }
    }

    [Fact]
    public void Any_light_has_the_code_of_the_standards_formula() => Gen.Double[-0.5, 1.5].Sample(
        light =>
        {
            double clipped = Math.Clamp(light, 0, 1);
            double part = clipped <= 0.0031308 ? 12.92 * clipped : 1.055 * Math.Pow(clipped, 1 / 2.4) - 0.055;

            // IEC 61966-2-1: rounded to the nearest code; at the very edge between two codes either is right.
            double exact = 255 * part;
            byte code = new LinearColour(light, 0, 0).ToSrgb().Red;
            return Math.Abs(code - exact) <= 0.5 + 1e-9;
        },
        iter: 20_000);
}
