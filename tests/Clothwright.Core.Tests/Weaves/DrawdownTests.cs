using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves;

public class DrawdownTests
{
    [Fact]
    public void Text_round_trips() =>
        Clothes.Any(70, 20).Sample(cloth => Assert.Equal(cloth, Drawdown.Parse(cloth.ToString()).Value), iter: 100, seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Exchanging_ends_and_picks_moves_every_crossing() =>
        Clothes.Any(600, 140).Sample(
            cloth =>
            {
                Drawdown turned = cloth.Transposed();
                Assert.Equal((cloth.Picks, cloth.Ends), (turned.Ends, turned.Picks));
                for (int pick = 0; pick < cloth.Picks; pick++)
                {
                    for (int end = 0; end < cloth.Ends; end++)
                    {
                        if (cloth[pick, end] != turned[end, pick]) Assert.Fail($"pick {pick}, end {end}");
                    }
                }

                Assert.Equal(cloth, turned.Transposed());
            },
            iter: 40,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Turning_over_twice_turning_round_four_times_and_complementing_twice_change_nothing() =>
        Clothes.Any(130, 70).Sample(
            cloth =>
            {
                Assert.Equal(cloth, cloth.OtherFace().OtherFace());
                Assert.Equal(cloth, cloth.Complement().Complement());
                Assert.Equal(cloth, cloth.PicksReversed().PicksReversed());
                Assert.Equal(cloth, cloth.TurnedClockwise().TurnedClockwise().TurnedClockwise().TurnedClockwise());
                Assert.Equal((long)cloth.Ends * cloth.Picks, cloth.WarpOnTop + cloth.Complement().WarpOnTop);
            },
            iter: 60,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void A_piece_repeats_past_the_edge()
    {
        Drawdown twill = Clothes.Of("1100/0110/0011/1001");

        Assert.Equal("10011/11001", twill.Piece(1, 5, 0, 2).ToString());
        Assert.Equal("110011/011001/001100/100110/110011", twill.Repeated(6, 5).ToString());
    }

    [Fact]
    public void The_grid_shows_the_first_pick_at_the_bottom() =>
        Assert.Equal("..##\n.##.\n##..", Clothes.Of("1100/0110/0011").ToGrid());

    [Fact]
    public void Marks_of_paper_patterns_are_read_too() =>
        Assert.Equal(Clothes.Of("1100/0110"), Drawdown.Parse("##..\n.Xx-").Value);

    [Fact]
    public void Equal_cloths_have_equal_hashes_and_others_differ()
    {
        Drawdown twill = Clothes.Of("1100/0110/0011/1001");

        Assert.Equal(twill.GetHashCode(), Clothes.Of("1100/0110/0011/1001").GetHashCode());
        Assert.True(twill.Equals((object)Clothes.Of("1100/0110/0011/1001")));
        Assert.False(twill.Equals(Clothes.Of("1100/0110/0011/0011")));
        Assert.False(twill.Equals((object?)null));
        Assert.Equal(0.5, twill.WarpFaceFraction);
    }

    [Theory]
    [InlineData("", "no picks", 0)]
    [InlineData("10/0a", "\"a\" is neither 0 nor 1", 4)]
    public void Text_that_is_no_drawdown_names_the_place(string text, string what, int position)
    {
        InputProblem problem = Drawdown.Parse(text).Problem!;

        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.Equal(position, problem.Position);
        Assert.Contains("1100/0110", problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_beyond_any_cloth_is_refused_before_it_is_laid_out()
    {
        string text = new string('1', 20_001) + string.Concat(Enumerable.Repeat("/1", 20_001));

        Assert.Contains("more crossings than can be worked with", Drawdown.Parse(text).Problem!.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Picks_of_unlike_width_are_refused_by_number()
    {
        InputProblem problem = Drawdown.Parse("1100/011/0011").Problem!;

        Assert.Equal("drawdown, pick 2", problem.Where);
        Assert.Contains("crosses 3 ends", problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Crossings_that_do_not_exist_are_refused()
    {
        Drawdown plain = Clothes.Of("10/01");

        Assert.Throws<ArgumentOutOfRangeException>(() => plain[0, 2]);
        Assert.Throws<ArgumentOutOfRangeException>(() => plain[2, 0]);
        Assert.Throws<ArgumentOutOfRangeException>(() => plain[0, -1]);
        Assert.Throws<ArgumentOutOfRangeException>(() => Drawdown.From(0, 1, (_, _) => true));
        Assert.Throws<ArgumentOutOfRangeException>(() => plain.Piece(0, 0, 0, 1));
    }
}
