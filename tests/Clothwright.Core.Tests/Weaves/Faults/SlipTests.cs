using Clothwright.Core.Tests.Weaves.Fitting;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Faults;

namespace Clothwright.Core.Tests.Weaves.Faults;

public class SlipTests
{
    private static readonly Draft Twill = FittingGen.Twill("1100", 16, 16);

    public static TheoryData<Slip, string, string, int, int> Told() => new()
    {
        {
            new WrongHeddle(6, ShaftSet.Of(4)), "End 7 is on shaft 4 instead of shaft 3.",
            "Tie a repair heddle on shaft 3 beside end 7. Cut the end behind the fell, draw it out of its wrong heddle, through the repair heddle and its own dent, and pin it to the cloth. Darn it into the 10 picks already woven after washing, or unweave them.",
            0, 1
        },
        {
            new CrossedEnds(6), "Ends 7 and 8 have changed places.",
            "See whether ends 7 and 8 cross between heddles and reed (they rub and block the shed) or sit in each other's heddles. Loosen or cut both in front of the reed, draw each through its own heddle and dent, and pin them to the cloth again.",
            0, 2
        },
        {
            new EndLeftOut(12), "End 13 (shaft 1) is left out.",
            "Wind one more end and hang it weighted over the back beam. Tie a repair heddle for it on shaft 1 between ends 12 and 13, re-sley from the right edge (3 ends) to make room, or let it share a dent, and pin it to the cloth.",
            0, 4
        },
        {
            new EndDoubled(2), "End 3 (shaft 3) is doubled: two ends work alike side by side.",
            "Pull one of ends 3 and 4 out behind and let it hang. If it leaves a gap, re-sley from the left edge (2 ends) to close it.",
            0, 2
        },
        {
            new MissedDent(4), "A dent before end 5 is empty: an open streak along the cloth, the weave itself is right.",
            "Re-sley from the left edge (4 ends) by one dent. A single open streak may close in washing: weave a sample before you decide.",
            0, 4
        },
        {
            new WrongTreadle(5, ShaftSet.Of(3)), "Pick 6 is woven on treadle 3 instead of treadle 2.",
            "Unweave to pick 6 (5 picks), and weave on from there, pick 6 with treadle 2.",
            5, 0
        },
        {
            new PickLeftOut(5), "Pick 6 (treadle 2) is left out.",
            "Unweave the 5 picks after pick 5, weave pick 6 (treadle 2), and go on.",
            5, 0
        },
        {
            new PickDoubled(5), "Pick 6 (treadle 2) is woven twice; with one shuttle the second pulls the first out at the edge.",
            "Unweave to pick 7 (4 picks): the second of the two comes out too. Weave on from there.",
            4, 0
        },
        {
            new WrongTie(2, 4), "Treadle 2 is also tied to shaft 4.",
            "Untie shaft 4 from treadle 2. Then unweave to pick 2 (9 picks), the first that used it.",
            9, 0
        },
        {
            new WrongTie(2, 3), "Treadle 2 is not tied to shaft 3.",
            "Tie treadle 2 to shaft 3. Then unweave to pick 2 (9 picks), the first that used it.",
            9, 0
        },
    };

    [Theory]
    [MemberData(nameof(Told))]
    public void A_slip_is_told_with_its_mend(Slip slip, string what, string mend, int picks, int ends)
    {
        Assert.Equal(what, slip.Describe(Twill));
        SlipMend told = slip.Mend(Twill, 10);
        Assert.Equal((mend, picks, ends), (told.Words, told.PicksToUnweave, told.EndsToMove));
        Assert.EndsWith(".", slip.Effect(Twill).Looks, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_before_the_first_pick_costs_no_weaving()
    {
        Assert.Contains("Nothing is woven yet", new WrongHeddle(6, ShaftSet.Of(4)).Mend(Twill, 0).Words, StringComparison.Ordinal);
        Assert.Contains("No pick woven so far has used it", new WrongTie(4, 1).Mend(Twill, 3).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_crowded_dent_changes_the_spacing_only()
    {
        var slip = new MissedDent(4, Crowded: true);
        Assert.Empty(slip.Effect(Twill).Changed);
        Assert.StartsWith("The dent of end 5 holds one end too many", slip.Describe(Twill), StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_missing_or_doubled_take_their_yarn_along()
    {
        Draft striped = Twill with { WarpOrder = ThreadOrder.Of(0, 1), WeftOrder = ThreadOrder.Of(0, 1, 1) };
        Assert.Equal([0, 0, 1, 0], Yarns(new EndLeftOut(1).Apply(striped).WarpOrder));
        Assert.Equal([0, 1, 1, 0], Yarns(new EndDoubled(1).Apply(striped).WarpOrder));
        Assert.Equal([0, 1, 0, 1], Yarns(new PickLeftOut(2).Apply(striped).WeftOrder));
        Assert.Equal([0, 0, 1, 1], Yarns(new PickDoubled(0).Apply(striped).WeftOrder));

        static int[] Yarns(ThreadOrder order) => [.. Enumerable.Range(0, 4).Select(t => order[t])];
    }

    [Fact]
    public void A_missing_line_is_shown_whole()
    {
        SlipEffect effect = new EndLeftOut(3).Effect(Twill);
        Assert.Equal(15, effect.Cloth.Ends);
        Assert.Equal(16, effect.Changed.Length);
        Assert.All(effect.Changed, c => Assert.Equal(3, c.End));
    }

    [Fact]
    public void Slips_where_there_is_no_such_thread_are_refused()
    {
        Slip[] slips =
        [
            new WrongHeddle(16, ShaftSet.Of(1)), new WrongHeddle(0, ShaftSet.Of(5)), new CrossedEnds(15), new EndLeftOut(-1), new EndDoubled(16),
            new MissedDent(16), new WrongTreadle(16, ShaftSet.Of(1)), new PickLeftOut(16), new PickDoubled(-1), new WrongTie(5, 1), new WrongTie(1, 5),
        ];
        Assert.All(slips, s => Assert.Throws<ArgumentOutOfRangeException>(() => s.Apply(Twill)));
        Draft single = FittingGen.Straight(["1"], 1, 2, 1);
        Assert.Throws<ArgumentException>(() => new EndLeftOut(0).Effect(single));
    }
}
