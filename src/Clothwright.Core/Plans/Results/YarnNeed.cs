using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans.Results;

/// <summary>What the whole warp takes of one yarn, and where it goes.</summary>
public sealed record YarnNeed
{
    /// <summary>The yarn.</summary>
    public required Yarn Yarn { get; init; }

    /// <summary>Ends of it in the warp.</summary>
    public required Derived<Whole> Ends { get; init; }

    /// <summary>Metres wound as warp.</summary>
    public required Derived<Length> Warp { get; init; }

    /// <summary>Metres used as weft, waste included.</summary>
    public required Derived<Length> Weft { get; init; }

    /// <summary>Warp and weft together.</summary>
    public required Derived<Length> Total { get; init; }

    /// <summary>Mass of it all.</summary>
    public required Derived<Mass> Mass { get; init; }

    /// <summary>Mass that stays in finished pieces, hems, seams and fringes included.</summary>
    public required Derived<Mass> InPieces { get; init; }

    /// <summary>Mass that does not: loom waste, gaps, sample, header, trimmings, tails.</summary>
    public required Derived<Mass> Waste { get; init; }

    /// <summary>Packages to open and to buy so that the yarn suffices in 95 of 100 cases.</summary>
    public required PackageChoice Packages { get; init; }

    /// <summary>Packages on the shelf to open, in the order of use.</summary>
    public ImmutableArray<YarnPackage> Open => [.. Packages.FromShelf.Select(u => u.Stock.Package)];

    /// <summary>Whole packages to buy; null when the shelf does not suffice and it is not known how the yarn is sold.</summary>
    public Derived<Whole>? Buy => Packages.Missing > Quantities.Mass.Zero ? null : Packages.NewPackages;

    /// <summary>Price of the packages to buy; null if no price is known and some are needed.</summary>
    public Derived<Money>? Purchase => Packages.Cost;

    /// <summary>Price of the yarn used; null if no price is known.</summary>
    public required Derived<Money>? Cost { get; init; }
}
