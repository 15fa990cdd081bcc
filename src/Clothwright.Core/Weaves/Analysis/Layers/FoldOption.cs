using Clothwright.Core.Weaves.Analysis.Edges;

namespace Clothwright.Core.Weaves.Analysis.Layers;

/// <summary>One way to arrange the edges of a cloth in layers, and what it does at the folds.</summary>
/// <param name="Start">The side from which every shuttle starts.</param>
/// <param name="Change">One end more or less, or none.</param>
/// <param name="Joins">The joins and their faults then.</param>
public sealed record FoldOption(ClothSide Start, EdgeChange Change, LayerJoins Joins);
