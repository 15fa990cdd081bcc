using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Fitting;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Fitting;

public class DraftReductionTests
{
    private static readonly Gen<Drawdown> Cloths =
        from ends in Gen.Int[3, 9]
        from rows in Gen.Int[0, 511].Array[2, 8]
        select Drawdown.From(ends, rows.Length, (pick, end) => (rows[pick] >> end & 1) == 1);

    [Theory]
    [InlineData(ReductionAim.FewestEnds)]
    [InlineData(ReductionAim.FewestCrossings)]
    public void No_other_choice_of_ends_to_keep_changes_less(ReductionAim aim) =>
        Gen.Select(Cloths, Gen.Int[1, 4]).Sample((cloth, shafts) =>
        {
            DraftReduction change = DraftReduction.To(cloth, shafts, aim: aim);
            Assert.True(change.Proved);
            Assert.Equal(Differences(cloth, change.Cloth), change.CrossingsChanged);
            Assert.InRange(Columns(change.Cloth).Distinct().Count(), 1, shafts);

            (int Ends, int Crossings) best = Every(cloth, shafts).MinBy(c => aim == ReductionAim.FewestEnds ? (c.Ends, c.Crossings) : (c.Crossings, c.Ends));
            Assert.Equal(best, (change.Ends.Length, change.CrossingsChanged));
        }, iter: 100);

    [Fact]
    public void A_cloth_that_fits_stays_as_it_is()
    {
        Drawdown cloth = FittingGen.Twill("1100", 8, 8).Drawdown();
        DraftReduction change = DraftReduction.To(cloth, 4, 4);
        Assert.Equal(cloth, change.Cloth);
        Assert.Equal("Nothing needs to change.", change.InWords);
    }

    [Fact]
    public void The_change_is_told_with_ends_and_crossings()
    {
        // 2/2 twill, one repeat of 4 ends: any end becomes like its neighbour at two crossings of four.
        DraftReduction change = DraftReduction.To(FittingGen.Twill("1100", 4, 4).Drawdown(), 3);
        Assert.Equal(2, change.CrossingsChanged);
        Assert.StartsWith("The smallest change that would do: thread 1 end otherwise (", change.InWords, StringComparison.Ordinal);
        Assert.EndsWith("); 2 of 16 crossings change.", change.InWords, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_at_all_cannot_be_kept()
    {
        Drawdown cloth = FittingGen.Twill("10", 2, 2).Drawdown();
        Assert.Throws<ArgumentOutOfRangeException>(() => DraftReduction.To(cloth, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => DraftReduction.To(cloth, 1, 0));
    }

    private static IEnumerable<(int Ends, int Crossings)> Every(Drawdown cloth, int shafts)
    {
        string[] columns = Columns(cloth);
        string[] kinds = [.. columns.Distinct()];
        for (int kept = 1; kept < 1 << kinds.Length; kept++)
        {
            string[] keep = [.. kinds.Where((_, i) => (kept >> i & 1) == 1)];
            if (keep.Length != Math.Min(shafts, kinds.Length)) continue;
            int ends = columns.Count(c => !keep.Contains(c));
            yield return (ends, columns.Sum(c => keep.Min(k => k.Where((bit, i) => bit != c[i]).Count())));
        }
    }

    private static string[] Columns(Drawdown cloth) =>
        [.. Enumerable.Range(0, cloth.Ends).Select(e => string.Concat(Enumerable.Range(0, cloth.Picks).Select(p => cloth[p, e] ? '1' : '0')))];

    private static int Differences(Drawdown a, Drawdown b) =>
        Enumerable.Range(0, a.Picks).Sum(p => Enumerable.Range(0, a.Ends).Count(e => a[p, e] != b[p, e]));
}
