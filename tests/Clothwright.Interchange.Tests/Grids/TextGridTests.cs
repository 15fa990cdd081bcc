using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Grids;
using CsCheck;

namespace Clothwright.Interchange.Tests.Grids;

public sealed class TextGridTests
{
    private static readonly Gen<Drawdown> Cloth =
        from ends in Gen.Int[1, 80]
        from picks in Gen.Int[1, 30]
        from up in Gen.Bool.Array[ends * picks]
        select Drawdown.From(ends, picks, (pick, end) => up[pick * ends + end]);

    [Theory]
    [InlineData("1100\n0110\n0011\n1001")]
    [InlineData("1100\r\n0110\r\n0011\r\n1001\r\n\r\n")]
    [InlineData("\n1 1 0 0\n0 1 1 0\n\n0 0 1 1\n1 0 0 1")]
    [InlineData("##..\n.##.\n..##\n#..#")]
    [InlineData("XX  \n XX \n  XX\nX  X")]
    [InlineData("XX\n XX\n  XX\nX  X")]
    [InlineData("xx--\n-xx-\n--xx\nx--x")]
    [InlineData("██░░\n░██░\n░░██\n█░░█")]
    [InlineData("1100/0110/0011/1001")]
    [InlineData("; a twill of the marsh\n; first pick last\n1001\n0011\n0110\n1100")]
    public void A_twill_is_a_twill_whatever_its_marks(string text) =>
        Assert.Equal("1100/0110/0011/1001", TextGrid.Read(text).Value.ToString());

    [Fact]
    public void The_order_of_the_picks_is_asked_for_and_what_the_grid_says_goes_before()
    {
        Assert.Equal("01/10", TextGrid.Read("10\n01", GridOrder.FirstPickLast).Value.ToString());
        Assert.Equal("10/01", TextGrid.Read("; First Pick First\n10\n01", GridOrder.FirstPickLast).Value.ToString());
    }

    [Theory]
    [InlineData("1100\n01?0", "line 2, column 3", "\"?\"")]
    [InlineData("1100\n0110\n001", "line 3, column 4", "crosses 3 ends, the one in line 1 crosses 4")]
    [InlineData("110\n01101", "line 2, column 4", "crosses 5 ends, the one in line 1 crosses 3")]
    [InlineData("10/011", "line 1, column 6", "crosses 3 ends")]
    [InlineData("10/0y", "line 1, column 5", "\"y\"")]
    [InlineData("X X\n\n X ", "line 2, column 1", "empty")]
    [InlineData("X\tX\n X ", "line 1, column 2", "\"\t\"")]
    [InlineData("", "line 1", "no picks")]
    [InlineData("; first pick last\n\n", "line 1", "no picks")]
    public void What_cannot_be_read_is_named_by_line_and_column(string text, string where, string what)
    {
        InputProblem problem = TextGrid.Read(text).Problem!;
        Assert.Equal(where, problem.Where);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_grid_beyond_the_limits_is_refused()
    {
        var limits = new ReadingLimits { MaxEnds = 8, MaxPicks = 3, MaxLineCharacters = 20, MaxLines = 10 };
        Assert.NotNull(TextGrid.Read("110011001", limits: limits).Problem);
        Assert.NotNull(TextGrid.Read("1/0/1/0", limits: limits).Problem);
        Assert.NotNull(TextGrid.Read(new string('1', 21), limits: limits).Problem);
        Assert.NotNull(TextGrid.Read(string.Concat(Enumerable.Repeat("1\n", 11)), limits: limits).Problem);
        Assert.True(TextGrid.Read("11001100/1/".TrimEnd('/').Replace("/1", "/00000000", StringComparison.Ordinal), limits: limits).Succeeded);
    }

    [Fact]
    public void A_grid_written_and_read_is_the_same_cloth() => Gen.Select(Cloth, Gen.Enum<GridOrder>(), Gen.Bool).Sample(
        (cloth, order, digits) =>
        {
            string text = TextGrid.Write(cloth, order, digits ? GridMarks.Digits : GridMarks.Hashes);
            Assert.Equal(cloth, TextGrid.Read(text).Value);
        },
        iter: 500);

    // A cloth with no warp on top at all shows no mark in crosses and blanks.
    [Fact]
    public void Crosses_and_blanks_hold_every_cloth_that_shows_its_warp() => Cloth.Where(cloth => cloth.ToString().Contains('1', StringComparison.Ordinal)).Sample(
        cloth => Assert.Equal(cloth, TextGrid.Read(TextGrid.Write(cloth, GridOrder.FirstPickLast, GridMarks.Crosses)).Value),
        iter: 500);
}
