using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>Chooses packages for a mass of yarn: from the shelf first and with the smallest leftover, then whole new packages.</summary>
public static class PackageReckoning
{
    private static readonly Rule EnoughRule = new("mass to have", "mean + 1.645 standard deviations: enough in 95 of 100 cases", Source.Derivation);

    private static readonly Rule WholeRule = new(
        "whole packages",
        "packages = (mass to have − mass from the shelf) / mass in a package, rounded up",
        Source.Derivation);

    private static readonly Rule CostRule = new("price of new packages", "packages × price of one", Source.Derivation);

    /// <summary>Packages for a mass.</summary>
    /// <param name="needed">Mass needed, at the agreed regain; its 95 % upper figure is what has to be there.</param>
    /// <param name="shelf">What is on the shelf; may be empty.</param>
    /// <param name="offer">How the yarn can be bought; null if it cannot.</param>
    /// <exception cref="InputProblemException">The offered package holds no yarn.</exception>
    public static PackageChoice Choose(Derived<Mass> needed, IReadOnlyList<StockLeft> shelf, YarnOffer? offer)
    {
        if (offer is { NetMass.Grams: 0 })
        {
            throw new InputProblemException(new InputProblem("The package on offer holds 0 g of yarn.", "offer.netMass", "Give the mass of yarn in one package, for example 100 g."));
        }

        Mass target = needed.Upper95;
        Derived<Mass> enough = Derived.From<Mass>("mass to have", EnoughRule, needed, kilograms => kilograms + (target.Kilograms - needed.Value.Kilograms));
        ImmutableArray<StockLeft> open = ShelfChoice.SmallestLeftover(target, [.. shelf.Where(s => s.AgreedMass.Value.Grams > 0)]);
        Derived<Mass> fromShelf = Derived.Given("mass from the shelf", Mass.FromKilograms(open.Sum(s => s.AgreedMass.Value.Kilograms)), Source.Measured);
        double shortfall = Math.Max(0, target.Kilograms - fromShelf.Value.Kilograms);
        Derived<Whole> bought = NewPackages(enough, fromShelf, offer);
        double boughtKilograms = bought.Value.Count * (offer?.NetMass.Kilograms ?? 0);
        Derived<Money>? cost = offer is null
            ? bought.Value.Count == 0 && shortfall == 0 ? Derived.Decision("price of new packages", Money.Zero) : null
            : Derived.From<Money>("price of new packages", CostRule, bought, Derived.Decision("price of one package", offer.Price), (n, price) => n * price);
        return new PackageChoice(
            enough,
            Uses(target, open),
            bought,
            cost,
            Mass.FromKilograms(Math.Max(0, fromShelf.Value.Kilograms + boughtKilograms - target.Kilograms)),
            Mass.FromKilograms(Math.Max(0, shortfall - boughtKilograms)),
            Warnings(open, bought.Value.Count));
    }

    /// <summary>Whole packages that hold a length.</summary>
    /// <param name="length">Length wanted; its 95 % upper figure counts.</param>
    /// <param name="perPackage">Length on one package; above 0.</param>
    /// <exception cref="InputProblemException">A package holds no length.</exception>
    public static Derived<Whole> Holding(Derived<Length> length, Length perPackage)
    {
        if (perPackage == Length.Zero) throw new InputProblemException(new InputProblem("A package holds a length of 0.", "offer.length", "Give the length on one package, for example 109 yd."));
        double margin = length.Upper95.Metres - length.Value.Metres;
        return Derived.From<Whole>(
            "packages",
            new Rule("whole packages", "packages = length to have / length on a package, rounded up", Source.Derivation),
            length,
            Derived.Decision("length on a package", perPackage),
            (metres, each) => RoundUp((metres + margin) / each));
    }

    private static Derived<Whole> NewPackages(Derived<Mass> enough, Derived<Mass> fromShelf, YarnOffer? offer) => offer is null
        ? Derived.Decision("new packages", Whole.FromCount(0))
        : Derived.From<Whole>(
            "new packages",
            WholeRule,
            enough,
            fromShelf,
            Derived.Decision("mass in a package", offer.NetMass),
            (need, have, each) => RoundUp(Math.Max(0, need - have) / each));

    // A hair over a whole number is an error of rounding, not another package.
    private static double RoundUp(double packages) => packages <= int.MaxValue
        ? Math.Ceiling(packages - 1e-9)
        : throw new InputProblemException(new InputProblem($"{packages:0} packages are more than can be counted.", "offer", "Give the mass of one package, for example 100 g."));

    private static ImmutableArray<PackageUse> Uses(Mass target, ImmutableArray<StockLeft> open)
    {
        var uses = ImmutableArray.CreateBuilder<PackageUse>();
        double rest = target.Kilograms;
        foreach (StockLeft stock in open)
        {
            double used = Math.Min(rest, stock.AgreedMass.Value.Kilograms);
            rest -= used;
            uses.Add(new PackageUse(stock, Mass.FromKilograms(used), Mass.FromKilograms(stock.AgreedMass.Value.Kilograms - used)));
        }

        return uses.ToImmutable();
    }

    private static ImmutableArray<YarnAdvice> Warnings(ImmutableArray<StockLeft> open, int bought)
    {
        string[] lots = [.. open.Select(s => s.Package.Lot).OfType<string>().Distinct(StringComparer.Ordinal)];
        if (lots.Length > 1)
        {
            return [new YarnAdvice(true, $"The packages come from different lots ({string.Join(", ", lots)}).", "Keep one lot for the warp, or alternate the lots every two picks in the weft.", Source.CommonPractice)];
        }

        return lots.Length == 1 && bought > 0
            ? [new YarnAdvice(true, $"New packages will rarely be of lot {lots[0]}.", "Compare the colours in daylight before warping, and keep one lot for the warp.", Source.CommonPractice)]
            : [];
    }
}
