using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Workings;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Analysis.Floats;

public class FloatAdviceTests
{
    private static readonly Derived<Sett> TenPerCentimetre = Derived.Decision("sett", Sett.FromPerCentimetre(10));

    // Huck lace: weft floats of 5 on the face, warp floats of 5 on the back.
    private static readonly Drawdown HuckLace = DraftNotation.Parse("1313124242 | 1:14 2:2 3:23 4:1 | 1212134343").Value.Drawdown();

    [Fact]
    public void A_float_over_five_ends_at_ten_to_the_centimetre_is_half_a_centimetre_long()
    {
        ThreadFloat longest = ClothFloats.Of(HuckLace, ClothReading.Repeat).WeftFace.Longest!.Value;

        Derived<Length> length = FloatLength.Of(longest, TenPerCentimetre, Derived.Decision("picks", Sett.FromPerCentimetre(8)));

        Assert.Equal(5, length.Value.Millimetres, 9);
        Assert.Equal(FloatLength.Rule, length.Working.Rule);
    }

    [Fact]
    public void Floats_that_do_in_a_scarf_catch_small_fingers_at_an_opener_sett()
    {
        ClothFloats floats = ClothFloats.Of(HuckLace, ClothReading.Repeat);
        Derived<Sett> open = Derived.Decision("sett", Sett.FromPerCentimetre(6));

        FloatAdvice child = FloatAdvice.For(floats, FloatPurpose.ChildThrow, open, open);
        FloatAdvice scarf = FloatAdvice.For(floats, FloatPurpose.Scarf, open, open);

        Assert.True(scarf.IsFine);
        Assert.Equal("", scarf.Caution);
        Assert.Equal([FloatKind.WarpBack, FloatKind.WeftFace], child.Warnings.Select(w => w.Longest.Kind));
        Assert.Contains("small fingers", child.Warnings[0].Text, StringComparison.Ordinal);
        Assert.Contains("where you live", child.Caution, StringComparison.Ordinal);
        Assert.Equal(floats.WeftFace.Times(5), child.Warnings[1].Times);
    }

    [Fact]
    public void An_endless_float_is_too_long_for_every_purpose()
    {
        ClothFloats floats = ClothFloats.Of(Clothes.Of("101/010/000"), ClothReading.Repeat);

        Assert.All(Enum.GetValues<FloatPurpose>(), purpose =>
        {
            FloatAdvice advice = FloatAdvice.For(floats, purpose, TenPerCentimetre, TenPerCentimetre);
            Assert.Contains("without end", Assert.Single(advice.Warnings).Text, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Every_purpose_has_a_rule_marked_as_common_practice()
    {
        Assert.Equal(Enum.GetValues<FloatPurpose>().Order(), FloatRules.All.Select(r => r.Purpose).Order());
        Assert.All(FloatRules.All, r => Assert.Equal(SourceKind.CommonPractice, r.Source.Kind));
        Assert.Equal(FloatRules.All.OrderBy(r => r.Longest), FloatRules.All);
        Assert.Throws<ArgumentOutOfRangeException>(() => FloatRules.For((FloatPurpose)99));
    }

    [Fact]
    public void Long_floats_are_found_in_their_places()
    {
        ThreadFloat[] found = [.. LongFloats.Of(HuckLace, FloatKind.WeftFace, ClothReading.Repeat, moreThan: 4)];

        Assert.All(found, f => Assert.Equal(5, f.Length));
        Assert.Equal(ClothFloats.Of(HuckLace, ClothReading.Repeat).WeftFace.Times(5), found.Length);
        Assert.Throws<ArgumentOutOfRangeException>(() => LongFloats.Of(HuckLace, FloatKind.WeftFace, ClothReading.Cut, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ClothFloats.Of(HuckLace, ClothReading.Cut)[(FloatKind)9]);
    }

    [Fact]
    public void The_longest_weft_float_of_neighbouring_shafts_is_the_longest_run_within_a_pair() =>
        // Adjacent-pair rule: ends that step to a neighbouring shaft of four, lifts of two neighbours; runs read round the repeat.
        Gen.Bool.Array[4, 40].Sample(
            steps =>
            {
                int[] threading = new int[steps.Length];
                for (int i = 1; i < steps.Length; i++) threading[i] = (threading[i - 1] + (steps[i] ? 1 : 3)) % 4;
                Drawdown cloth = Drawdown.From(threading.Length, 4, (pick, end) => threading[end] == pick || threading[end] == (pick + 1) % 4);
                FloatTally weft = ClothFloats.Of(cloth, ClothReading.Cut).WeftFace;
                int longest = Enumerable.Range(0, 4).Max(pair => LongestWithin(threading, pair));
                Assert.Equal(longest, weft.LongestLength);
            },
            iter: 300,
            seed: "0N0XIzNsQ0O2");

    private static int LongestWithin(int[] threading, int pair)
    {
        int longest = 0;
        int run = 0;
        foreach (int shaft in threading)
        {
            run = shaft == pair || shaft == (pair + 1) % 4 ? run + 1 : 0;
            longest = Math.Max(longest, run);
        }

        return longest;
    }
}
