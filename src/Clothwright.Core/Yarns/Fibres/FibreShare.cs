using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>One fibre of a blend.</summary>
/// <param name="Fibre">The fibre.</param>
/// <param name="MassShare">Its share of the mass, above 0, at most 1.</param>
public sealed record FibreShare(Fibre Fibre, Ratio MassShare);
