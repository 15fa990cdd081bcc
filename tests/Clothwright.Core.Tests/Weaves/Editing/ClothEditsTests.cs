using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Editing;
using Clothwright.Core.Weaves.Fitting;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Editing;

public class ClothEditsTests
{
    private static readonly Draft Twill = DraftNotation.Parse("1234 | 1:12 2:23 3:34 4:14 | 1234").Value;

    [Fact]
    public void Crossings_are_painted_and_those_outside_left_out()
    {
        Drawdown cloth = Drawdown.From(3, 2, (_, _) => false).Painted([new(0, 0), new(1, 2), new(2, 0), new(0, 3), new(-1, 0)], warpOnTop: true);
        Assert.Equal(2, cloth.WarpOnTop);
        Assert.True(cloth[0, 0] && cloth[1, 2]);
        Assert.Equal(1, cloth.Painted([new(0, 0)], warpOnTop: false).WarpOnTop);
        Assert.Equal(5, cloth.ChangedOver([new(0, 0), new(0, 0), new(0, 1), new(0, 2), new(1, 0), new(1, 1), new(4, 4)]).WarpOnTop);
    }

    [Fact]
    public void A_piece_is_put_elsewhere_and_cut_at_the_edge()
    {
        Drawdown cloth = Drawdown.From(4, 4, (_, _) => false).WithOver(Drawdown.From(2, 2, (_, _) => true), new Crossing(1, 3));
        Assert.Equal(2, cloth.WarpOnTop);
        Assert.True(cloth[1, 3] && cloth[2, 3]);
    }

    [Fact]
    public void The_last_thread_stays() =>
        Assert.Contains("No pick of 4 would be left", Assert.Throws<InputProblemException>(() => Twill.Drawdown().WithPicks(new TakenOut(new ThreadSpan(0, 4)))).Problem.What, StringComparison.Ordinal);

    [Fact]
    public void Whatever_is_painted_is_woven_or_refused_with_a_reason() =>
        Gen.Select(DraftGen.Treadled, Gen.Select(Gen.Int[0, 13], Gen.Int[0, 13]).Array[0, 6], Gen.Bool, Gen.Int[2, 8], Gen.Bool).Sample(
            (draft, places, warp, shafts, levers) =>
            {
                Drawdown painted = draft.Drawdown().Painted(places.Select(p => new Crossing(p.Item1, p.Item2)), warp);
                var limits = new LoomLimits(shafts, 8, 1, levers ? ShedAction.Levers : ShedAction.Rising);
                PaintedCloth found = PaintedCloth.For(levers ? draft.AsLiftPlan() : draft, painted, limits);
                if (found.Draft is { } woven)
                {
                    Assert.Equal(painted, woven.Drawdown());
                    Assert.True(woven.Shafts <= shafts);
                    Assert.Empty(DraftCheck.Problems(woven));
                }
                else
                {
                    Assert.NotEmpty(found.Reasons);
                }
            },
            iter: 400,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Another_tie_keeps_threading_and_treadling()
    {
        // All crossings of shaft 1 with treadle 2: one tie more.
        Drawdown painted = Twill.Drawdown().Painted([new(1, 0)], warpOnTop: true);
        PaintedCloth found = PaintedCloth.For(Twill, painted, new LoomLimits(4, 6));
        Assert.Equal(PaintedKeeping.ThreadingAndTreadling, found.Kept);
        Assert.Equal("1234 | 1:12 2:123 3:34 4:14 | 1234", DraftNotation.Format(found.Draft!));
    }

    [Fact]
    public void A_pick_of_its_own_keeps_the_threading()
    {
        Draft twice = Twill.Edited(DraftPart.Treadling, new OnceMore(new ThreadSpan(0, 4)));
        PaintedCloth found = PaintedCloth.For(twice, twice.Drawdown().Painted([new(1, 0)], warpOnTop: true), new LoomLimits(4, 6));
        Assert.Equal(PaintedKeeping.Threading, found.Kept);
        Assert.Equal("1234 | 1:12 2:123 3:34 4:14 5:23 | 12341534", DraftNotation.Format(found.Draft!));
    }

    [Fact]
    public void An_end_of_its_own_takes_a_shaft_more_or_is_refused()
    {
        Draft twice = Twill.Edited(DraftPart.Threading, new OnceMore(new ThreadSpan(0, 4)));
        Drawdown painted = twice.Drawdown().Painted([new(1, 0)], warpOnTop: true);
        PaintedCloth five = PaintedCloth.For(twice, painted, new LoomLimits(8, 8));
        Assert.Equal(PaintedKeeping.Nothing, five.Kept);
        Assert.Equal(5, five.Draft!.Shafts);
        PaintedCloth refused = PaintedCloth.For(twice, painted, new LoomLimits(4, 8));
        Assert.Null(refused.Draft);
        Assert.Contains(refused.Reasons, r => r.Contains("needs 5", StringComparison.Ordinal));
        Assert.Equal(1, refused.SmallestChange!.CrossingsChanged);
    }
}
