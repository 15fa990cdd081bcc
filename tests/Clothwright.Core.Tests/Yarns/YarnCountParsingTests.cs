using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Yarns;

public class YarnCountParsingTests
{
    [Theory]
    [InlineData("8/2", CountSystem.Cotton, 8, 2)]
    [InlineData("2-40's", CountSystem.Cotton, 40, 2)]
    [InlineData("2/8's", CountSystem.Cotton, 8, 2)]
    [InlineData("20s", CountSystem.Cotton, 20, 1)]
    [InlineData("20s/2", CountSystem.Cotton, 20, 2)]
    [InlineData("3/2", CountSystem.Cotton, 3, 2)]
    [InlineData("12/15", CountSystem.Cotton, 12, 15)]
    [InlineData("2/8", CountSystem.Cotton, 8, 2)]
    [InlineData("NeC 8/2", CountSystem.Cotton, 8, 2)]
    [InlineData("8/2 cotton", CountSystem.Cotton, 8, 2)]
    [InlineData("8×2", CountSystem.Cotton, 8, 2)]
    [InlineData("2/20", CountSystem.Worsted, 20, 2)]
    [InlineData("20/2", CountSystem.Worsted, 20, 2)]
    [InlineData("3/15", CountSystem.Worsted, 15, 3)]
    [InlineData("Nm 28/2", CountSystem.Metric, 28, 2)]
    [InlineData("2/28 Nm", CountSystem.Metric, 28, 2)]
    [InlineData("16/1", CountSystem.Linen, 16, 1)]
    [InlineData("1/16", CountSystem.Linen, 16, 1)]
    [InlineData("dtex 78 f24 x 2", CountSystem.Decitex, 78, 2)]
    [InlineData("150 den", CountSystem.Denier, 150, 1)]
    [InlineData("1450 yd/lb", CountSystem.YardsPerPound, 1450, 1)]
    [InlineData("400 m/100 g", CountSystem.MetresPer100Grams, 400, 1)]
    [InlineData("34 tex S 600 x 2 Z 400; R 69.3 tex", CountSystem.Tex, 34, 2)]
    [InlineData("R 69.3 tex Z 400 / 2 S 600; 34 tex", CountSystem.Tex, 34, 2)]
    [InlineData("34 tex x 2 x 3", CountSystem.Tex, 34, 6)]
    [InlineData("R 60 tex/2", CountSystem.Tex, 60, 2)]
    [InlineData("1.5 run", CountSystem.WoollenRun, 1.5, 1)]
    public void Both_orders_marks_and_signs_are_read(string text, CountSystem system, double number, int plies)
    {
        YarnCount count = YarnCount.Parse(text, system).Value;
        Assert.Equal((number, plies), (count.Number, count.Plies));
    }

    [Theory]
    [InlineData("2/8", CountSystem.Cotton)]
    [InlineData("20/2", CountSystem.Worsted)]
    [InlineData("2/60", CountSystem.SilkEnglish)]
    public void Reading_against_the_custom_of_a_system_is_remarked(string text, CountSystem system) =>
        Assert.Contains("By the custom of", YarnCount.Parse(text, system).Value.Remark, StringComparison.Ordinal);

    [Theory]
    [InlineData("8/2", CountSystem.Cotton)]
    [InlineData("2/20", CountSystem.Worsted)]
    [InlineData("28/2", CountSystem.Metric)]
    [InlineData("2/28", CountSystem.Metric)]
    public void Reading_by_the_custom_needs_no_remark(string text, CountSystem system) =>
        Assert.Null(YarnCount.Parse(text, system).Value.Remark);

    [Theory]
    [InlineData("", CountSystem.Cotton, "No count")]
    [InlineData("abc", CountSystem.Cotton, "a number is missing")]
    [InlineData("0/2", CountSystem.Cotton, "is 0")]
    [InlineData("8/0", CountSystem.Cotton, "0 where strands")]
    [InlineData("-8/2", CountSystem.Cotton, "below 0")]
    [InlineData("8/", CountSystem.Cotton, "lacks a number")]
    [InlineData("8/2/3", CountSystem.Cotton, "two ways")]
    [InlineData("8,5/2", CountSystem.Cotton, "comma")]
    [InlineData("8.5/2.5", CountSystem.Cotton, "whole number of strands")]
    [InlineData("2's/8's", CountSystem.Cotton, "whole number of strands")]
    [InlineData("8/2 fluffy", CountSystem.Cotton, "followed by")]
    [InlineData("28/2 Nm", CountSystem.Worsted, "names the system metric")]
    [InlineData("60/2", CountSystem.Tex, "does not say whether")]
    [InlineData("70/2 den", CountSystem.Denier, "does not say whether")]
    [InlineData("1450/2", CountSystem.YardsPerPound, "finished yarn")]
    [InlineData("34 tex x 2; R 10 tex", CountSystem.Tex, "do not fit together")]
    [InlineData("34 tex x 2; 69 tex", CountSystem.Tex, "do not fit together")]
    [InlineData("34 tex x 2; 34 x 2", CountSystem.Tex, "tell the strands")]
    [InlineData("34 tex x 2;", CountSystem.Tex, "a number is missing")]
    [InlineData("99999999999999999999", CountSystem.Cotton, "out of all bounds")]
    public void What_is_no_count_is_refused_with_a_mend(string text, CountSystem system, string says)
    {
        InputProblem problem = YarnCount.Parse(text, system, "warp[0].count").Problem!;
        Assert.Contains(says, problem.What, StringComparison.Ordinal);
        Assert.Equal("warp[0].count", problem.Where);
        Assert.Matches("[0-9]|system", problem.Mend);
    }

    [Fact]
    public void A_tex_number_with_a_stroke_is_asked_about_both_ways()
    {
        InputProblem problem = YarnCount.Parse("60/2", CountSystem.Tex).Problem!;
        Assert.Contains("R 60 tex/2", problem.Mend, StringComparison.Ordinal);
        Assert.Contains("60 tex x 2", problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_count_without_system_has_all_its_readings()
    {
        ImmutableArray<YarnCount> readings = YarnCount.Readings("8/2");
        Assert.Equal([CountSystem.Cotton, CountSystem.Worsted, CountSystem.Metric, CountSystem.Linen, CountSystem.SilkEnglish], readings.Select(r => r.System));
        // Yards per pound of 8/2 in the five systems: 840 × 4, 560 × 4, 496.055 × 4, 300 × 4, 840 × 8 (definitions).
        Assert.Equal([3360, 2240, 1984, 1200, 6720], readings.Select(r => (int)Math.Round(LinearDensity.FromTex(r.Tex).YardsPerPound)));
    }

    [Fact]
    public void A_single_number_is_offered_only_where_yarns_have_it()
    {
        Assert.Equal(
            [CountSystem.Tex, CountSystem.Decitex, CountSystem.Denier, CountSystem.YardsPerPound, CountSystem.YardsPerOunce, CountSystem.YardsPer50Grams, CountSystem.MetresPerKilogram, CountSystem.MetresPer100Grams, CountSystem.MetresPer50Grams],
            YarnCount.Readings("1450").Select(r => r.System));
        Assert.DoesNotContain(CountSystem.YardsPerPound, YarnCount.Readings("16").Select(r => r.System));
    }

    [Fact]
    public void A_count_that_names_its_system_has_one_reading() =>
        Assert.Equal(CountSystem.Metric, Assert.Single(YarnCount.Readings("Nm 28/2")).System);

    [Theory]
    [InlineData("")]
    [InlineData("seaweed")]
    [InlineData("8.5/2.5")]
    public void What_is_no_count_has_no_readings(string text) => Assert.Empty(YarnCount.Readings(text));

    [Fact]
    public void Any_text_is_read_or_refused_but_never_throws() =>
        Gen.OneOf<string>(Gen.String, Gen.Char["0123456789/x-'sS RtexNmcd.;, "].Array.Select(c => new string(c))).Sample(text =>
        {
            foreach (CountSystem system in Enum.GetValues<CountSystem>())
            {
                Parsed<YarnCount> count = YarnCount.Parse(text, system);
                Assert.True(count.Succeeded ? count.Value.Tex > 0 : count.Problem.Mend.Length > 0);
            }

            Assert.True(YarnLabel.Parse(text) is { Succeeded: true } or { Problem.Mend.Length: > 0 });
            Assert.NotNull(YarnSize.Parse(text).Problem ?? (object)YarnSize.Parse(text).Value);
        });

    [Fact]
    public void The_working_shows_formula_source_and_strands()
    {
        Derived<LinearDensity> size = YarnCount.Parse("8/2", CountSystem.Cotton).Value.ToLinearDensity();
        // 453.59237 g / (840 × 0.9144 m) × 1000 m = 590.5412474 tex for count 1.
        Assert.Equal("tex = 590.5412474 / count × strands × true to count", size.Working.Rule.Formula);
        Assert.Equal(SourceKind.Standard, size.Working.Rule.Source.Kind);
        Assert.Equal(["count, NeC", "true to count", "strands"], size.Working.Inputs.Select(i => i.Label));
        Assert.InRange(size.StandardDeviation / size.Value.Tex, 0.029, 0.031);
    }

    [Fact]
    public void The_working_carries_the_remark_on_an_unusual_order() =>
        Assert.Contains("Read as 2 strands of 8", YarnSize.Parse("2/8", CountSystem.Cotton).Value.Working.Inputs[0].Rule.Formula, StringComparison.Ordinal);

    [Fact]
    public void Linen_strays_further_from_its_count_than_cotton() =>
        Assert.True(
            YarnCount.Parse("16/2", CountSystem.Linen).Value.ToLinearDensity() is var linen
            && YarnCount.Parse("16/2", CountSystem.Cotton).Value.ToLinearDensity() is var cotton
            && linen.StandardDeviation / linen.Value.Tex > 1.5 * cotton.StandardDeviation / cotton.Value.Tex);

    [Fact]
    public void Parts_out_of_range_are_slips_of_the_program()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => YarnCount.Of(CountSystem.Cotton, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => YarnCount.Of(CountSystem.Cotton, 8, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => YarnCount.Of(CountSystem.Cotton, 8, 1000));
        Assert.Throws<ArgumentOutOfRangeException>(() => YarnCount.Of((CountSystem)999, 8));
        Assert.Throws<ArgumentException>(() => FoldedYarn.Together("none"));
    }

    [Theory]
    [InlineData("coton", "cotton")]
    [InlineData("worstd", "worsted")]
    [InlineData("yd/lbs", "yd/lb")]
    public void A_mistyped_system_gets_the_nearest_names(string text, string near) =>
        Assert.Contains(near, CountSystems.Parse(text).Problem!.Mend, StringComparison.Ordinal);

    [Fact]
    public void An_unknown_system_gets_the_whole_list() =>
        Assert.Contains("cotton, worsted, metric, linen", CountSystems.Parse("barnacle-and-limpet").Problem!.Mend, StringComparison.Ordinal);
}
