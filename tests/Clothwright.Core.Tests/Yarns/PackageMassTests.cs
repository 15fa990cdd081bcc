using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Yarns;

public class PackageMassTests
{
    [Fact]
    public void A_label_is_believed_within_what_the_law_tolerates()
    {
        StockLeft left = StockReckoning.Left(EstuaryYarns.Merino, Told(200));
        Assert.Equal(200, left.AgreedMass.Value.Grams, 9);
        // Directive 76/211/EEC, Annex I, from memory: 4.5 % of 200 g, here two standard deviations.
        Assert.Equal(4.5, left.AgreedMass.StandardDeviation * 1000, 9);
    }

    // Directive 76/211/EEC, Annex I, from memory: tolerable negative errors of packages.
    [Theory]
    [InlineData(50, 4.5)]
    [InlineData(100, 4.5)]
    [InlineData(200, 9)]
    [InlineData(250, 9)]
    [InlineData(400, 12)]
    [InlineData(1000, 15)]
    [InlineData(2000, 30)]
    public void The_tolerable_error_follows_the_size_of_the_package(double grams, double tolerated) =>
        Assert.Equal(tolerated / 2, StockReckoning.Left(EstuaryYarns.Bamboo, Told(grams)).NetMass.StandardDeviation * 1000, 9);

    [Fact]
    public void A_support_that_was_not_weighed_widens_the_spread()
    {
        YarnPackage weighed = EstuaryYarns.Cone(230, 30, 65);
        StockLeft known = StockReckoning.Left(EstuaryYarns.Bamboo, weighed);
        StockLeft usual = StockReckoning.Left(EstuaryYarns.Bamboo, weighed with { Basis = MassBasis.UsualSupport });

        // Common practice, no source: a paper cone of a small package weighs 15 to 45 g, 30 g in the middle.
        Assert.Equal(known.NetMass.Value.Grams, usual.NetMass.Value.Grams, 6);
        Assert.Equal(30 / Math.Sqrt(12), Math.Sqrt(Math.Pow(usual.NetMass.StandardDeviation, 2) - Math.Pow(0.001 / Math.Sqrt(12), 2)) * 1000, 6);
    }

    [Fact]
    public void Balls_and_skeins_have_no_support()
    {
        Assert.Equal(0, UsualSupport.Of(PackageForm.Ball, Mass.FromGrams(50)).Value.Grams);
        Assert.Equal(0, UsualSupport.Of(PackageForm.Skein, Mass.FromGrams(100)).Value.Grams);
        Assert.True(UsualSupport.Of(PackageForm.Tube, Mass.FromGrams(900)).Value > UsualSupport.Of(PackageForm.Tube, Mass.FromGrams(200)).Value);
        Assert.Throws<ArgumentOutOfRangeException>(() => UsualSupport.Of((PackageForm)9, Mass.Zero));
    }

    [Fact]
    public void What_is_reserved_is_not_free()
    {
        FreeStock free = FreeStock.Of([EstuaryYarns.Stock(200), EstuaryYarns.Stock(150)], [("reedbed scarves", Mass.FromGrams(120)), ("ferry scarf", Mass.FromGrams(80))]);
        Assert.Equal((350, 200, 150, 0), (Grams(free.OnShelf.Value), Grams(free.Reserved.Value), Grams(free.Free.Value), Grams(free.Short)));
        FreeStock over = FreeStock.Of([EstuaryYarns.Stock(50)], [("reedbed scarves", Mass.FromGrams(120))]);
        Assert.Equal((0, 70), (Grams(over.Free.Value), Grams(over.Short)));
    }

    [Fact]
    public void Begun_packages_are_used_up_first()
    {
        Parsed<System.Collections.Immutable.ImmutableArray<YarnPackage>> left = StockUse.Take([EstuaryYarns.Cone(230), EstuaryYarns.Cone(80), EstuaryYarns.Cone(230)], Mass.FromGrams(70));
        // The begun cone holds 50 g: it is gone, and 20 g are missing from the next.
        Assert.Equal([210.0, 230.0], left.Value.Select(p => Math.Round(p.GrossMass.Grams, 6)));
    }

    [Fact]
    public void One_package_can_be_named()
    {
        Assert.Equal([200.0, 80.0], StockUse.Take([EstuaryYarns.Cone(230), EstuaryYarns.Cone(80)], Mass.FromGrams(30), place: 0).Value.Select(p => Math.Round(p.GrossMass.Grams, 6)));
        Assert.Contains("no package 3", StockUse.Take([EstuaryYarns.Cone(230), EstuaryYarns.Cone(80)], Mass.FromGrams(30), place: 2).Problem!.What, StringComparison.Ordinal);
    }

    [Fact]
    public void More_than_is_there_cannot_be_used() =>
        Assert.Contains("more than", StockUse.Take([EstuaryYarns.Cone(230)], Mass.FromGrams(201)).Problem!.What, StringComparison.Ordinal);

    [Fact]
    public void Using_takes_away_exactly_what_was_used() => Gen.Select(Gen.Double[1, 400].Array[1, 6], Gen.Double[0, 1]).Sample((nets, share) =>
    {
        YarnPackage[] packages = [.. nets.Select(n => EstuaryYarns.Cone(n + 30))];
        double used = nets.Sum() * share;
        double left = StockUse.Take([.. packages], Mass.FromGrams(used)).Value.Sum(p => p.GrossMass.Grams - 30);
        Assert.Equal(nets.Sum() - used, left, 1e-5);
    });

    private static YarnPackage Told(double grams) => new(PackageForm.Cone, Mass.FromGrams(grams), Mass.Zero) { Basis = MassBasis.Told };

    private static double Grams(Mass mass) => Math.Round(mass.Grams, 6);
}
