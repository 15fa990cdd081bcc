using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>What is left on a package, by weighing.</summary>
/// <param name="Package">The package.</param>
/// <param name="NetMass">Yarn on it as weighed.</param>
/// <param name="AgreedMass">The same yarn at the regain that the trade agreed on, for which its count holds.</param>
/// <param name="Length">Length of yarn left.</param>
public sealed record StockLeft(YarnPackage Package, Derived<Mass> NetMass, Derived<Mass> AgreedMass, Derived<Length> Length);
