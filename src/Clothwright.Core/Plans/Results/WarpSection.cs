using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Results;

/// <summary>A stretch of the warp, from the front, and what becomes of it.</summary>
/// <param name="Kind">What becomes of it.</param>
/// <param name="Label">In words, for example <c>first scarf, woven</c>.</param>
/// <param name="Warp">Length of warp it uses.</param>
/// <param name="PieceIndex">The piece it belongs to, 0-based; null for waste.</param>
public sealed record WarpSection(WarpSectionKind Kind, string Label, Derived<Length> Warp, int? PieceIndex);
