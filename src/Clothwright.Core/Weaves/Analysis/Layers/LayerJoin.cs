using Clothwright.Core.Weaves.Analysis.Edges;

namespace Clothwright.Core.Weaves.Analysis.Layers;

/// <summary>Two layers joined at a side.</summary>
/// <param name="Upper">0-based upper layer, counted from the top.</param>
/// <param name="Lower">0-based lower layer.</param>
/// <param name="Side">The side at which a shuttle goes from one to the other.</param>
public readonly record struct LayerJoin(int Upper, int Lower, ClothSide Side);
