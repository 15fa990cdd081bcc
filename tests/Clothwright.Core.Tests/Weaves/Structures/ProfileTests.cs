using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Structures;

public class ProfileTests
{
    [Fact]
    public void Letters_may_carry_lengths()
    {
        Profile profile = Profile.Parse("a2 B, c3", "AB - c").Value;

        Assert.Equal([1, 1, 2, 3, 3, 3], profile.Ends.ToArray());
        Assert.Equal([ShaftSet.Of(1, 2), ShaftSet.None, ShaftSet.Of(3)], profile.Picks.ToArray());
        Assert.Equal(3, profile.Blocks);
        Assert.True(profile.Shows(0, 2));
        Assert.False(profile.Shows(1, 0));
    }

    [Fact]
    public void Left_open_the_lines_follow_the_blocks_as_drawn_in() =>
        Gen.Int[0, 5].Array[1, 20].Sample(blocks =>
        {
            Profile profile = Profile.Parse(string.Concat(blocks.Select(b => (char)('A' + b)))).Value;
            Assert.All(Enumerable.Range(0, blocks.Length), i => Assert.True(profile.Shows(i, i)));
        });

    [Fact]
    public void A_small_draft_is_read_as_a_profile_and_written_as_it_is_typed() =>
        Gen.Select(Gen.Int[0, 5].Array[1, 20], Gen.Int[0, 63].Array[1, 12]).Sample(
            (blocks, lines) =>
            {
                var draft = new Draft { Shafts = 6, Threading = [.. blocks.Select(b => ShaftSet.Of(b + 1))], LiftPlan = [.. lines.Select(l => new ShaftSet((ulong)l))] };
                Profile profile = Profile.Of(draft).Value;
                Drawdown small = draft.Drawdown();
                for (int line = 0; line < lines.Length; line++)
                {
                    for (int unit = 0; unit < blocks.Length; unit++) Assert.Equal(small[line, unit], profile.Shows(line, unit));
                }

                Profile typed = Profile.Parse(profile.BlocksText, profile.ShownText).Value;
                Assert.Equal(profile.Ends.AsEnumerable(), typed.Ends);
                Assert.Equal(profile.Picks.AsEnumerable(), typed.Picks);
            },
            iter: 200,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void A_unit_on_two_shafts_is_no_profile() =>
        Assert.Equal("threading, end 2", Profile.Of(DraftNotation.Parse("1(12) | 1:1 2:2 | 12").Value).Problem!.Where);

    [Theory]
    [InlineData("", "", "blocks", 0)]
    [InlineData("AB1?", "", "blocks", 3)]
    [InlineData("AZ", "", "blocks", 1)]
    [InlineData("A0", "", "blocks", 0)]
    [InlineData("A99999999999", "", "blocks", 0)]
    [InlineData("AB", "A Q", "shown", 2)]
    public void What_names_no_block_is_pointed_at(string blocks, string shown, string where, int position)
    {
        InputProblem problem = Profile.Parse(blocks, shown, 4).Problem!;

        Assert.Equal(where, problem.Where);
        Assert.Equal(position, problem.Position);
    }

    [Fact]
    public void A_unit_weave_that_would_take_too_many_shafts_is_refused()
    {
        Profile wide = Profile.Parse("ABCDEFGHIJKLMNOPQRSTUVWXYZ").Value;

        Assert.Contains("shafts", Assert.Throws<InputProblemException>(() => TurnedBlocks.Of(8, 3, wide)).Problem.What, StringComparison.Ordinal);
        Assert.Equal(28, SummerAndWinter.Of(wide).Draft.Shafts);
        Assert.Equal(28, BronsonLace.Of(wide).Draft.Shafts);
    }
}
