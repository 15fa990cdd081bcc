namespace Clothwright.Core.Weaves.Analysis.Edges;

/// <summary>One way to arrange the edges, and what it does.</summary>
/// <param name="Start">The side from which every shuttle starts.</param>
/// <param name="Change">One end more or less, or none.</param>
/// <param name="Report">The turns that are missed then.</param>
public sealed record SelvedgeOption(ClothSide Start, EdgeChange Change, SelvedgeReport Report);
