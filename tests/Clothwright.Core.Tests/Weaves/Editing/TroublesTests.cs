using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Editing;
using Clothwright.Core.Weaves.Structures;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Editing;

public class TroublesTests
{
    private static readonly FloatAllowance Three = new(3, 3);

    [Fact]
    public void Plain_weave_is_sound() => Assert.Empty(Of("12 | 1:1 2:2 | 12"));

    [Fact]
    public void Turns_that_miss_the_edge_end_are_found_at_the_edge()
    {
        // Of 1/2 twill each end is down on two picks together; where the shuttle turns between them on its side, the edge end is missed. Three picks bring it to either side.
        Trouble turns = Assert.Single(Of("123 | 1:1 2:2 3:3 | 123"));
        Assert.Equal(TroubleKind.LooseTurn, turns.Kind);
        Assert.All(turns.Spots, s => Assert.True(s.Ends is { First: 0 or 2, Count: 1 } && s.Picks.Count == 1));
    }

    [Fact]
    public void Two_up_two_down_is_sound_if_begun_from_the_right_side() => Assert.Empty(Of("1234 | 1:12 2:23 3:34 4:14 | 1234"));

    [Fact]
    public void Long_floats_are_found_where_they_lie()
    {
        // Pick 1 passes over ends 2 to 6 of six and under end 1.
        ImmutableArray<Trouble> found = Of("123456 | 1:1 2:246 3:135 | 123232");
        Trouble weft = Assert.Single(found, t => t.Float == FloatKind.WeftFace);
        Assert.Equal((5, 1L), (weft.Longest, weft.Times));
        Assert.Equal(new TroubleSpot(new ThreadSpan(1, 5), new ThreadSpan(0, 1)), Assert.Single(weft.Spots));
    }

    [Fact]
    public void Ends_on_no_shaft_threads_that_nothing_holds_and_doubled_sheds_are_found()
    {
        Assert.Equal(new TroubleSpot(new ThreadSpan(2, 1), new ThreadSpan(0, 2)), Of("120 | 1:1 2:2 | 12").First(t => t.Kind == TroubleKind.Unthreaded).Spots[0]);
        Assert.Contains(new TroubleSpot(new ThreadSpan(2, 1), new ThreadSpan(0, 2)), Of("120 | 1:1 2:2 | 12").First(t => t.Kind == TroubleKind.NeverHeld).Spots);
        Trouble same = Of("1212 | 1:1 2:2 | 1122").First(t => t.Kind == TroubleKind.SameShed);
        Assert.Equal([0, 2], same.Spots.Select(s => s.Picks.First));
    }

    [Fact]
    public void Layers_that_are_meant_are_no_trouble()
    {
        Weave two = WeaveCatalogue.Make("double weave").Value;
        Assert.Equal(2, Assert.Single(Troubles.Of(two.Draft, Three), t => t.Kind == TroubleKind.Layers).Longest);
        Assert.DoesNotContain(Troubles.Of(two.Draft, Three, layers: 2), t => t.Kind is TroubleKind.Layers or TroubleKind.LooseTurn);
    }

    [Fact]
    public void As_many_places_are_counted_as_the_analysis_counts_floats() =>
        DraftGen.Treadled.Sample(
            draft =>
            {
                ClothFloats floats = ClothFloats.Of(draft.Drawdown(), ClothReading.Repeat);
                foreach (Trouble trouble in Troubles.Of(draft, Three).Where(t => t.Kind == TroubleKind.LongFloat))
                {
                    Assert.Equal(floats[trouble.Float!.Value].Counts.Where(c => c.Length > 3).Sum(c => c.Times), trouble.Times);
                    Assert.Equal(trouble.Times, trouble.Spots.Length);
                }
            },
            iter: 200,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Floats_that_are_caught_are_no_longer_too_long() =>
        Gen.Select(DraftGen.Treadled, Gen.Int[1, 4]).Sample(
            (draft, most) =>
            {
                Drawdown cloth = draft.Drawdown();
                foreach (FloatKind kind in Enum.GetValues<FloatKind>())
                {
                    Drawdown held = HeldFloats.Of(cloth, kind, new FloatAllowance(most, most));
                    Assert.Empty(LongFloats.Of(held, kind, ClothReading.Repeat, most));
                }
            },
            iter: 200,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void A_float_of_seven_is_caught_once_in_its_middle()
    {
        Drawdown cloth = Drawdown.From(8, 1, (_, end) => end == 0);
        Drawdown held = HeldFloats.Of(cloth, FloatKind.WeftFace, Three);
        Assert.True(held[0, 4]);
        Assert.Equal(2, held.WarpOnTop);
    }

    [Fact]
    public void What_a_float_may_pass_follows_purpose_and_sett()
    {
        // 12 mm for a scarf (FloatRules, common practice, no source) at 8 ends and 5 picks per cm: 9.6 ends and 6 picks.
        Assert.Equal(new FloatAllowance(9, 6), FloatAllowance.For(FloatRules.For(FloatPurpose.Scarf), Sett.FromPerCentimetre(8), Sett.FromPerCentimetre(5)));
        Assert.Equal(new FloatAllowance(3, 3), FloatAllowance.For(FloatRules.For(FloatPurpose.ChildThrow), Sett.FromPerCentimetre(2), Sett.FromPerCentimetre(2)));
    }

    [Theory]
    [InlineData(PieceKind.Scarf, Wearer.Adult, FloatPurpose.Scarf)]
    [InlineData(PieceKind.Scarf, Wearer.Baby, FloatPurpose.ChildThrow)]
    [InlineData(PieceKind.Towel, Wearer.Household, FloatPurpose.Towel)]
    [InlineData(PieceKind.Blanket, Wearer.Adult, FloatPurpose.Blanket)]
    [InlineData(PieceKind.Bag, Wearer.Adult, FloatPurpose.Bag)]
    [InlineData(PieceKind.Yardage, Wearer.Adult, FloatPurpose.Garment)]
    public void A_piece_goes_by_its_purpose_and_a_childs_by_the_strictest(PieceKind kind, Wearer wearer, FloatPurpose purpose) =>
        Assert.Equal(purpose, new Piece { Name = "piece", Kind = kind, Wearer = wearer, Width = Length.FromCentimetres(20), Length = Length.FromCentimetres(50), Weft = [new WeftRun("reed", 1)] }.FloatPurpose());

    private static ImmutableArray<Trouble> Of(string notation) => Troubles.Of(DraftNotation.Parse(notation).Value, Three);
}
