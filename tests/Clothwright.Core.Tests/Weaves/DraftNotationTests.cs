using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves;

public class DraftNotationTests
{
    [Fact]
    public void A_draft_written_and_read_is_the_same() =>
        Clothes.Drafts(mostShafts: 64, mostThreads: 20).Sample(
            draft => Assert.Equal(draft, DraftNotation.Parse(DraftNotation.Format(draft)).Value), iter: 500, seed: "0N0XIzNsQ0O2");

    [Theory]
    [InlineData("12(34)1 | 1:12 2:23 | 121")]
    [InlineData("1234 | lift 12 23 0 14")]
    [InlineData("10(ab)[36] | 1:1[40] 2:0 | 1(12)0 | sinking | 48 shafts")]
    public void What_is_read_is_written_alike(string text) =>
        Assert.Equal(text, DraftNotation.Format(DraftNotation.Parse(text).Value));

    [Fact]
    public void Blanks_and_capitals_do_not_matter() =>
        Assert.Equal(
            DraftNotation.Parse("1a(12) | 1:1a 2:2 | 12").Value,
            DraftNotation.Parse(" 1 A ( 1 2 )|1:1A  2:2|1 2| rising ").Value);

    [Theory]
    [InlineData("1234", "no treadling and no lift plan", 4)]
    [InlineData("1234 | 1:12", "no treadling", 11)]
    [InlineData("12?4 | 1:1 | 1", "\"?\" is no shaft", 2)]
    [InlineData("1(2 | 1:1 | 1", "not closed", 1)]
    [InlineData("12 | 1 2:2 | 12", "Treadle 1 is not followed by a colon", 6)]
    [InlineData("12 | 0:1 | 12", "numbered from 1", 5)]
    [InlineData("12 | 1:1 1:2 | 12", "tied twice", 9)]
    [InlineData("12 | 1:1[99] | 1", "from 1 to 64", 8)]
    [InlineData("12 | 1:1 | 1 | upward", "\"upward\" is not understood", 14)]
    public void What_cannot_be_read_is_named_with_its_place(string text, string what, int position)
    {
        InputProblem problem = DraftNotation.Parse(text).Problem!;

        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.Equal(position, problem.Position);
        Assert.Contains("1234 | 1:12", problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_by_chance_gives_a_draft_or_a_problem_and_never_fails_otherwise() =>
        Gen.String["0123ab()[]|:, liftshd\n"].Sample(
            text =>
            {
                Parsed<Draft> read = DraftNotation.Parse(text);
                if (read.TryGet(out Draft? draft)) Assert.NotNull(draft.Drawdown());
                else Assert.NotEmpty(read.Problem!.Mend);
            },
            iter: 2000,
            seed: "0N0XIzNsQ0O2");
}
