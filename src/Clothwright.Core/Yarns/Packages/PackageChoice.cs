using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>Which packages to open and how many to buy.</summary>
/// <param name="Needed">Mass to have, at the agreed regain: enough in 95 of 100 cases.</param>
/// <param name="FromShelf">Packages to open, in the order of use.</param>
/// <param name="NewPackages">Whole packages to buy.</param>
/// <param name="Cost">Price of the new packages; null when no price is known and some are needed.</param>
/// <param name="Leftover">What stays over, on all opened and bought packages together.</param>
/// <param name="Missing">What neither shelf nor purchase covers; 0 unless the yarn cannot be bought.</param>
/// <param name="Warnings">What to look at before starting, for example lots that differ.</param>
public sealed record PackageChoice(
    Derived<Mass> Needed,
    ImmutableArray<PackageUse> FromShelf,
    Derived<Whole> NewPackages,
    Derived<Money>? Cost,
    Mass Leftover,
    Mass Missing,
    ImmutableArray<YarnAdvice> Warnings)
{
    /// <summary>Packages to have at hand, from shelf and shop.</summary>
    public int Packages => FromShelf.Length + NewPackages.Value.Count;
}
