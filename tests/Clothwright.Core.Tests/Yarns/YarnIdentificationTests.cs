using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;
using Clothwright.TestKit;
using CsCheck;

namespace Clothwright.Core.Tests.Yarns;

public class YarnIdentificationTests
{
    private static readonly YarnClues TenMetres = new(Length.FromMetres(10), Mass.FromGrams(1.48));

    [Fact]
    public void Ten_metres_of_1_48_grams_with_33_wraps_are_ranked()
    {
        IdentifiedYarn yarn = Identify(TenMetres with { Wraps = Sett.FromPerInch(33) });
        Approved.Check(
            string.Join('\n', yarn.Readings.Select(r => $"{r.Chance.Percent:0} %: {r.Sentence}").Append($"none of these: {yarn.Unlisted.Percent:0} %").Concat(yarn.NextTests)) + "\n",
            "ten metres of 1.48 g, 33 wraps.txt");
    }

    [Fact]
    public void The_likeliest_reading_of_148_tex_is_eight_two_cotton()
    {
        YarnReading first = Identify(TenMetres).Readings[0];
        Assert.Equal("8/2 cotton", first.Count.ToString());
        Assert.Equal("cotton", first.Fibre.Id);
        Assert.Equal(148 / 147.6353 - 1, first.Deviation.Value, 1e-5);
    }

    [Fact]
    public void Burning_hair_turns_the_ranking_to_wool()
    {
        YarnReading first = Identify(TenMetres with { Burns = BurnHint.BurntHair, Feels = FeelHint.Springy }).Readings[0];
        Assert.Equal(FibreFamily.Wool, first.Fibre.Family);
        Assert.Equal("2/12 worsted", first.Count.ToString());
    }

    [Theory]
    [InlineData(BurnHint.BurntPaper, FeelHint.Drapy, FibreFamily.Regenerated)]
    [InlineData(BurnHint.BurntPaper, FeelHint.SoftDull, FibreFamily.Cotton)]
    public void Hints_part_fibres_of_one_count(BurnHint burns, FeelHint feels, FibreFamily family) =>
        Assert.Equal(family, Identify(TenMetres with { Burns = burns, Feels = feels }).Readings[0].Fibre.Family);

    [Fact]
    public void Crisp_yarn_of_207_tex_that_burns_like_paper_is_sixteen_two_linen()
    {
        // 16/2 linen is 206.7 tex (300 yd to the lea).
        YarnReading first = Identify(new YarnClues(Length.FromMetres(10), Mass.FromGrams(2.07)) { Burns = BurnHint.BurntPaper, Feels = FeelHint.Crisp, Plies = 2 }).Readings[0];
        Assert.Equal(("16/2 linen", "linen"), (first.Count.ToString(), first.Fibre.Id));
    }

    [Fact]
    public void Ten_metres_of_a_third_of_a_gram_that_feel_silky_are_sixty_two_silk()
    {
        YarnReading first = Identify(new YarnClues(Length.FromMetres(10), Mass.FromGrams(0.333)) { Feels = FeelHint.Silky }).Readings[0];
        Assert.Equal(("60/2 metric", "silk-spun"), (first.Count.ToString(), first.Fibre.Id));
    }

    [Fact]
    public void Counted_strands_part_a_single_from_a_plied_yarn()
    {
        // 103.3 tex is 16/1 linen (1653.5 / 16), and near 2/18 worsted (98.4) and 10/2 linen is far off.
        var clues = new YarnClues(Length.FromMetres(20), Mass.FromGrams(2.07));
        Assert.Equal(1, Identify(clues with { Plies = 1 }).Readings[0].Count.Plies);
        Assert.Equal(2, Identify(clues with { Plies = 2 }).Readings[0].Count.Plies);
    }

    [Fact]
    public void More_wraps_than_cotton_would_give_speak_for_a_denser_fibre_than_wool() =>
        Assert.True(Chance(TenMetres with { Wraps = Sett.FromPerInch(38) }, FibreFamily.Wool) < Chance(TenMetres with { Wraps = Sett.FromPerInch(28) }, FibreFamily.Wool));

    [Fact]
    public void Chances_and_what_is_unlisted_never_sum_to_more_than_one() =>
        Gen.Select(Gen.Double[0.5, 100], Gen.Double[0.01, 200]).Sample((metres, grams) =>
        {
            IdentifiedYarn yarn = Identify(new YarnClues(Length.FromMetres(metres), Mass.FromGrams(grams)));
            Assert.InRange(yarn.Readings.Sum(r => r.Chance.Value) + yarn.Unlisted.Value, 0, 1 + 1e-9);
            Assert.Equal(yarn.Readings.Select(r => r.Chance.Value).OrderDescending(), yarn.Readings.Select(r => r.Chance.Value));
            Assert.Equal(grams * 1000 / metres, yarn.LinearDensity.Value.Tex, 1e-6 * grams * 1000 / metres);
        });

    [Fact]
    public void A_yarn_between_all_counts_is_most_likely_none_of_them() =>
        Assert.True(Identify(new YarnClues(Length.FromMetres(10), Mass.FromGrams(35.21))).Unlisted.Value > 0.9);

    [Fact]
    public void Every_trade_count_is_found_again_from_its_own_length_and_mass() =>
        Assert.All(TradeCounts.All, t =>
        {
            IdentifiedYarn yarn = Identify(new YarnClues(Length.FromMetres(100), Mass.FromGrams(t.Count.Tex / 10)) { ScaleStep = Mass.FromGrams(0.01), Plies = t.Count.Plies });
            Assert.Contains(yarn.Readings, r => r.Count.ToString() == t.Count.ToString());
        });

    [Fact]
    public void A_coarse_scale_widens_the_spread()
    {
        double fine = Identify(TenMetres).LinearDensity.StandardDeviation;
        double coarse = Identify(TenMetres with { ScaleStep = Mass.FromGrams(1) }).LinearDensity.StandardDeviation;
        Assert.True(coarse > 5 * fine);
        // 0.01 g of step: √((0.01 / √12 / 1.48)² + 0.005²) of 148 tex (GUM, JCGM 100:2008, from memory).
        Assert.Equal(148 * Math.Sqrt(Math.Pow(0.01 / Math.Sqrt(12) / 1.48, 2) + 0.005 * 0.005), fine, 1e-4);
    }

    [Fact]
    public void A_burn_test_comes_with_a_caution() =>
        Assert.Contains(Identify(TenMetres).NextTests, t => t.Contains("Caution", StringComparison.Ordinal) && t.Contains("over water", StringComparison.Ordinal));

    [Fact]
    public void What_was_tried_is_not_asked_for_again()
    {
        IdentifiedYarn yarn = Identify(TenMetres with { Burns = BurnHint.BurntPaper, Feels = FeelHint.Drapy, Plies = 2, Wraps = Sett.FromPerInch(33) });
        Assert.Empty(yarn.NextTests);
    }

    [Fact]
    public void Knitting_classes_go_by_wraps_where_there_are_any()
    {
        Assert.Equal([0], Identify(TenMetres with { Wraps = Sett.FromPerInch(33) }).KnittingClasses.Select(c => c.Number));
        Assert.Equal([3], Identify(new YarnClues(Length.FromMetres(10), Mass.FromGrams(4.5))).KnittingClasses.Select(c => c.Number));
    }

    [Fact]
    public void Clues_that_cannot_be_are_refused()
    {
        Assert.Equal("length", YarnIdentification.Identify(TenMetres with { Length = Length.Zero }).Problem!.Where);
        Assert.Equal("mass", YarnIdentification.Identify(TenMetres with { Mass = Mass.Zero }).Problem!.Where);
        Assert.Equal("plies", YarnIdentification.Identify(TenMetres with { Plies = 0 }).Problem!.Where);
    }

    private static IdentifiedYarn Identify(YarnClues clues) => YarnIdentification.Identify(clues).Value;

    private static double Chance(YarnClues clues, FibreFamily family) => Identify(clues).Readings.Where(r => r.Fibre.Family == family).Sum(r => r.Chance.Value);
}
