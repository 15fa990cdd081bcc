using Clothwright.Core.Setts.Limits;

namespace Clothwright.Core.Tests.Setts;

public class WeaveFamilyTests
{
    [Theory]
    [InlineData("10/01", WeaveFamily.Plain)]
    [InlineData("1010/0101/1010/0101", WeaveFamily.Plain)]
    [InlineData("1100/0110/0011/1001", WeaveFamily.Twill)]
    [InlineData("110/011/101", WeaveFamily.Twill)]
    [InlineData("1001/0011/0110/1100", WeaveFamily.Twill)]
    [InlineData("11001100/01100110/00110011/10011001", WeaveFamily.Twill)]
    [InlineData("10000/00100/00001/01000/00010", WeaveFamily.Satin)]
    [InlineData("01111/11011/11110/10111/11101", WeaveFamily.Satin)]
    [InlineData("1100/1100/0011/0011", WeaveFamily.Hopsack)]
    [InlineData("1001/1001/0110/0110", WeaveFamily.Hopsack)]
    [InlineData("10/10/01/01", WeaveFamily.WarpRib)]
    [InlineData("1100/0011", WeaveFamily.WeftRib)]
    public void Named_families_are_told_from_the_drawdown(string weave, WeaveFamily family) =>
        Assert.Equal(family, WeaveFamilyFinder.Of(SampleYarns.Weave(weave)));

    [Theory]
    [InlineData("101010/010101/101010/010101/111000/000111")]
    [InlineData("11000/00110/10001/01100/00011")]
    [InlineData("1100/0110/1001/0011")]
    [InlineData("11/11")]
    [InlineData("1110/1110/0001/0001")]
    public void A_weave_of_no_family_is_left_without_one(string weave) =>
        Assert.Null(WeaveFamilyFinder.Of(SampleYarns.Weave(weave)));

    // Exponents from memory of Brierley and Robinson & Marks; twill 0.39 read in GATE Textile 2006.
    [Theory]
    [InlineData(WeaveFamily.Plain, 0.39)]
    [InlineData(WeaveFamily.Twill, 0.39)]
    [InlineData(WeaveFamily.Satin, 0.42)]
    [InlineData(WeaveFamily.Hopsack, 0.45)]
    [InlineData(WeaveFamily.WarpRib, 0.42)]
    [InlineData(WeaveFamily.WeftRib, 0.35)]
    public void Each_family_has_its_exponent(WeaveFamily family, double exponent) => Assert.Equal(exponent, Brierley.Exponent(family));
}
