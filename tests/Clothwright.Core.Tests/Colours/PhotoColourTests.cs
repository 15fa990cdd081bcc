using Clothwright.Core.Colours;

namespace Clothwright.Core.Tests.Colours;

public class PhotoColourTests
{
    private static readonly SrgbColour Tide = new(0x2f, 0x5f, 0x77);

    [Fact]
    public void Without_paper_the_colour_is_as_the_camera_saw_it() => Assert.Equal(Tide, PhotoColour.Of(LinearColour.From(Tide)));

    [Fact]
    public void Under_lamplight_the_paper_takes_the_lamp_out()
    {
        // A lamp that gives the red whole, three quarters of the green and two fifths of the blue falls on yarn and paper alike.
        LinearColour yarn = LinearColour.From(Tide);
        var lit = new LinearColour(yarn.Red, yarn.Green * 0.75, yarn.Blue * 0.4);
        var paper = new LinearColour(0.88, 0.88 * 0.75, 0.88 * 0.4);
        Assert.Equal(Tide, PhotoColour.Of(lit, paper));
        Assert.NotEqual(Tide, PhotoColour.Of(lit));
    }

    [Fact]
    public void A_spot_brighter_than_the_paper_is_white_at_most() =>
        Assert.Equal(new SrgbColour(255, 255, 255), PhotoColour.Of(new LinearColour(0.9, 0.9, 0.9), new LinearColour(0.3, 0.3, 0.3)));

    [Fact]
    public void Paper_in_the_dark_does_not_divide_by_nothing() =>
        Assert.InRange(PhotoColour.Of(new LinearColour(0.001, 0.001, 0.001), new LinearColour(0, 0, 0)).Red, 0, 255);
}
