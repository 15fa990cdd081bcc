using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using CsCheck;

namespace Clothwright.Core.Tests.Yarns;

public class PackageReckoningTests
{
    private static readonly YarnOffer Cone250 = new(PackageForm.Cone, Mass.FromGrams(250), Money.FromAmount(18.5));

    [Fact]
    public void The_shelf_is_used_with_the_smallest_leftover()
    {
        PackageChoice choice = Choose(150, [100, 60, 200]);
        Assert.Equal([60, 100], Grams(choice));
        Assert.Equal(10, choice.Leftover.Grams, 6);
        Assert.Equal(0, choice.NewPackages.Value.Count);
        Assert.Equal(0, choice.Cost!.Value.Amount);
    }

    [Fact]
    public void Small_rests_are_used_up_before_the_large_package_is_opened()
    {
        PackageChoice choice = Choose(150, [100, 60, 200]);
        Assert.Equal([60, 90], choice.FromShelf.Select(u => Math.Round(u.Used.Grams, 6)));
        Assert.Equal([0, 10], choice.FromShelf.Select(u => Math.Round(u.Leftover.Grams, 6)));
    }

    [Fact]
    public void Of_equal_leftovers_the_fewest_packages_are_opened() => Assert.Equal([150], Grams(Choose(150, [50, 100, 150, 150])));

    [Fact]
    public void What_the_shelf_lacks_is_bought_in_whole_packages()
    {
        PackageChoice choice = Choose(700, [100, 60]);
        Assert.Equal([60, 100], Grams(choice));
        // 540 g short in packages of 250 g: 3, at 18.50 each.
        Assert.Equal(3, choice.NewPackages.Value.Count);
        Assert.Equal(55.5, choice.Cost!.Value.Amount, 9);
        Assert.Equal(210, choice.Leftover.Grams, 6);
        Assert.Equal(5, choice.Packages);
    }

    [Fact]
    public void Exactly_full_packages_are_not_rounded_up() => Assert.Equal(2, Choose(500, []).NewPackages.Value.Count);

    [Fact]
    public void The_upper_figure_decides_and_not_the_mean()
    {
        Derived<Mass> needed = Derived.Given("needed", Mass.FromGrams(245), Source.Measured, 0.010);
        PackageChoice choice = PackageReckoning.Choose(needed, [], Cone250);
        // 245 g + 1.645 × 10 g = 261.4 g: one package of 250 g is not enough.
        Assert.Equal(261.4485, choice.Needed.Value.Grams, 1e-3);
        Assert.Equal(2, choice.NewPackages.Value.Count);
    }

    [Fact]
    public void Yarn_that_cannot_be_bought_is_missing()
    {
        PackageChoice choice = PackageReckoning.Choose(Need(300), [EstuaryYarns.Stock(120)], null);
        Assert.Equal(180, choice.Missing.Grams, 6);
        Assert.Null(choice.Cost);
    }

    [Fact]
    public void Nothing_needed_opens_nothing()
    {
        PackageChoice choice = Choose(0, [100]);
        Assert.Empty(choice.FromShelf);
        Assert.Equal(0, choice.Packages);
        Assert.Equal(0, choice.Leftover.Grams);
    }

    [Fact]
    public void Lots_that_differ_are_warned_about()
    {
        PackageChoice mixed = PackageReckoning.Choose(Need(150), [EstuaryYarns.Stock(100, "A7"), EstuaryYarns.Stock(60, "B2")], Cone250);
        Assert.Contains("B2, A7", Assert.Single(mixed.Warnings).Says, StringComparison.Ordinal);
        PackageChoice bought = PackageReckoning.Choose(Need(150), [EstuaryYarns.Stock(100, "A7")], Cone250);
        Assert.Contains("lot A7", Assert.Single(bought.Warnings).Says, StringComparison.Ordinal);
        Assert.Empty(PackageReckoning.Choose(Need(90), [EstuaryYarns.Stock(100, "A7")], Cone250).Warnings);
    }

    [Fact]
    public void A_package_that_holds_nothing_is_refused()
    {
        Assert.Throws<InputProblemException>(() => PackageReckoning.Choose(Need(1), [], Cone250 with { NetMass = Mass.Zero }));
        Assert.Throws<InputProblemException>(() => PackageReckoning.Holding(Derived.Decision("wanted", Length.FromMetres(1)), Length.Zero));
        Assert.Throws<InputProblemException>(() => PackageReckoning.Choose(Need(1e9), [], Cone250 with { NetMass = Mass.FromGrams(1e-6) }));
    }

    [Fact]
    public void No_other_choice_from_the_shelf_leaves_less() =>
        Gen.Select(Gen.Int[1, 4000], Gen.Int[1, 2000].Array[0, 9]).Sample((needed, shelf) =>
        {
            PackageChoice choice = Choose(needed / 10.0, [.. shelf.Select(g => g / 10.0)]);
            int total = shelf.Sum();
            int least = Enumerable.Range(0, 1 << shelf.Length)
                .Select(set => shelf.Where((_, i) => (set >> i & 1) == 1).Sum())
                .Where(sum => sum >= needed)
                .DefaultIfEmpty(total)
                .Min();
            Assert.Equal(least, (int)Math.Round(choice.FromShelf.Sum(u => u.Stock.AgreedMass.Value.Grams) * 10));
            Assert.Equal(Math.Min(total, needed), (int)Math.Round(choice.FromShelf.Sum(u => u.Used.Grams) * 10));
        });

    [Fact]
    public void Shelf_and_purchase_always_cover_the_need() =>
        Gen.Select(Gen.Double[0, 5000], Gen.Double[0, 400].Array[0, 12], Gen.Double[5, 500]).Sample((needed, shelf, package) =>
        {
            PackageChoice choice = PackageReckoning.Choose(Need(needed), [.. shelf.Select(g => EstuaryYarns.Stock(g))], Cone250 with { NetMass = Mass.FromGrams(package) });
            double have = choice.FromShelf.Sum(u => u.Stock.AgreedMass.Value.Grams) + choice.NewPackages.Value.Count * package;
            Assert.True(have >= needed - 1e-6);
            Assert.Equal(have - needed, choice.Leftover.Grams, 1e-6);
            Assert.InRange(choice.Missing.Grams, 0, 1e-6);
        });

    private static Derived<Mass> Need(double grams) => Derived.Decision("needed", Mass.FromGrams(grams));

    private static PackageChoice Choose(double needed, double[] shelf) =>
        PackageReckoning.Choose(Need(needed), [.. shelf.Select(g => EstuaryYarns.Stock(g))], Cone250);

    private static double[] Grams(PackageChoice choice) => [.. choice.FromShelf.Select(u => Math.Round(u.Stock.AgreedMass.Value.Grams, 6))];
}
