using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>One package from the shelf that is to be used.</summary>
/// <param name="Stock">The package and what is on it.</param>
/// <param name="Used">Mass taken from it, at the agreed regain.</param>
/// <param name="Leftover">Mass that stays on it.</param>
public sealed record PackageUse(StockLeft Stock, Mass Used, Mass Leftover);
