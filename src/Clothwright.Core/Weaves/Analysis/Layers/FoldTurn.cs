using Clothwright.Core.Weaves.Analysis.Edges;

namespace Clothwright.Core.Weaves.Analysis.Layers;

/// <summary>A turn at which a shuttle goes from one layer to another.</summary>
/// <param name="Turn">Shuttle, side and picks.</param>
/// <param name="FromLayer">0-based layer it comes from, counted from the top.</param>
/// <param name="ToLayer">0-based layer it goes into.</param>
/// <param name="IsFault">The weft passes the outermost ends of both layers on the same side of the opened cloth: at the fold two ends weave as one.</param>
public readonly record struct FoldTurn(ShuttleTurn Turn, int FromLayer, int ToLayer, bool IsFault);
