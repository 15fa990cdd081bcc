using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Yarns;

public class StockReckoningTests
{
    [Fact]
    public void The_support_is_taken_off_before_the_length_is_reckoned()
    {
        StockLeft bare = StockReckoning.Left(EstuaryYarns.Bamboo, EstuaryYarns.Cone(200, 0, 65));
        StockLeft coned = StockReckoning.Left(EstuaryYarns.Bamboo, EstuaryYarns.Cone(231.5, 31.5, 65));
        Assert.Equal(bare.Length.Value.Metres, coned.Length.Value.Metres, 6);
    }

    [Fact]
    public void In_a_heated_winter_room_the_same_weight_is_more_yarn()
    {
        double dry = StockReckoning.Left(EstuaryYarns.Merino, EstuaryYarns.Cone(200, 0, 35)).Length.Value.Metres;
        double damp = StockReckoning.Left(EstuaryYarns.Merino, EstuaryYarns.Cone(200, 0, 65)).Length.Value.Metres;
        // Wool holds 15 % at 65 % r.h. and about 60 % of that at 35 %: (1 + 0.15) / (1 + 0.09) = 1.055 (from memory of sorption curves).
        Assert.Equal(1.15 / 1.09, dry / damp, 6);
    }

    [Fact]
    public void For_polyester_the_room_hardly_matters()
    {
        double dry = StockReckoning.Left(EstuaryYarns.Polyester, EstuaryYarns.Cone(200, 0, 35)).Length.Value.Metres;
        double damp = StockReckoning.Left(EstuaryYarns.Polyester, EstuaryYarns.Cone(200, 0, 65)).Length.Value.Metres;
        Assert.InRange(dry / damp, 1, 1.002);
    }

    [Fact]
    public void An_unmeasured_room_counts_as_65_percent_with_a_wider_spread()
    {
        StockLeft measured = StockReckoning.Left(EstuaryYarns.Merino, EstuaryYarns.Cone(200, 0, 65));
        StockLeft unknown = StockReckoning.Left(EstuaryYarns.Merino, EstuaryYarns.Cone(200, 0));
        Assert.Equal(measured.Length.Value.Metres, unknown.Length.Value.Metres, 6);
        Assert.True(unknown.Length.StandardDeviation > measured.Length.StandardDeviation);
    }

    [Fact]
    public void What_is_left_has_a_spread_by_scale_room_and_count()
    {
        Derived<Length> left = StockReckoning.Left(EstuaryYarns.Bamboo, EstuaryYarns.Cone(60, 30)).Length;
        string[] causes = [.. left.Working.Spread.Shares.Select(s => s.Cause.Name)];
        Assert.Contains(causes, c => c.Contains("scale", StringComparison.Ordinal));
        Assert.Contains(causes, c => c.Contains("humidity", StringComparison.Ordinal));
        Assert.Contains(causes, c => c.Contains("true", StringComparison.Ordinal));
        Assert.InRange(left.StandardDeviation / left.Value.Metres, 0.03, 0.06);
    }

    [Fact]
    public void A_support_heavier_than_the_package_is_refused()
    {
        InputProblem problem = Assert.Throws<InputProblemException>(() => StockReckoning.Left(EstuaryYarns.Bamboo, EstuaryYarns.Cone(20, 30))).Problem;
        Assert.Equal("packages.tare", problem.Where);
        Assert.Contains("30", problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_humidity_above_100_percent_is_refused() =>
        Assert.Contains("120 %", Assert.Throws<InputProblemException>(() => StockReckoning.Left(EstuaryYarns.Bamboo, EstuaryYarns.Cone(200, 0, 120))).Problem.What, StringComparison.Ordinal);

    [Fact]
    public void The_shelf_holds_the_sum_of_its_packages()
    {
        Yarn yarn = EstuaryYarns.Bamboo with { Packages = [EstuaryYarns.Cone(230), EstuaryYarns.Cone(130)] };
        Assert.Equal(StockReckoning.OnShelf(yarn).Sum(s => s.Length.Value.Metres), StockReckoning.LengthOnShelf(yarn).Value.Metres, 6);
        Assert.Equal(0, StockReckoning.LengthOnShelf(EstuaryYarns.Bamboo).Value.Metres);
    }

    [Fact]
    public void Regain_and_content_turn_into_each_other() =>
        Gen.Double[0, 0.9].Sample(content => Assert.Equal(content, Moisture.ContentFromRegain(Moisture.RegainFromContent(Ratio.FromValue(content))).Value, 12));

    [Fact]
    public void Content_is_less_than_regain() =>
        Gen.Double[0.001, 0.4].Sample(regain => Assert.True(Moisture.ContentFromRegain(Ratio.FromValue(regain)).Value < regain));

    [Fact]
    public void A_damper_room_never_holds_less_water() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1]).Sample((a, b) =>
            Assert.True(Regain(Math.Min(a, b)) <= Regain(Math.Max(a, b)) + 1e-12));

    [Fact]
    public void What_cannot_be_dried_is_a_slip_of_the_program()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Moisture.RegainFromContent(Ratio.FromValue(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Moisture.RegainByDrying(Mass.FromGrams(10), Mass.FromGrams(11)));
    }

    private static double Regain(double humidity) => Moisture.RegainInRoom(EstuaryYarns.Linen.Fibres, Ratio.FromValue(humidity)).Value.Value;
}
