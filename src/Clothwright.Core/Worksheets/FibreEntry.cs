using Clothwright.Core.Quantities;

namespace Clothwright.Core.Worksheets;

/// <summary>One fibre of a yarn as it stands on the worksheet.</summary>
/// <param name="FibreId">The fibre, by its id in the catalogue.</param>
/// <param name="MassShare">Its share of the mass, above 0, at most 1.</param>
public sealed record FibreEntry(string FibreId, Ratio MassShare);
