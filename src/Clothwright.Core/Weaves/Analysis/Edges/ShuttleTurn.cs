namespace Clothwright.Core.Weaves.Analysis.Edges;

/// <summary>A shuttle turning back at an edge, from one of its picks to its next.</summary>
/// <param name="Shuttle">The shuttle, from 0, as numbered in the order of picks.</param>
/// <param name="Side">The side at which it turns.</param>
/// <param name="Pick">0-based pick it comes from; beyond the repeat in a second repeat.</param>
/// <param name="NextPick">0-based pick it goes into; beyond the repeat in a second repeat.</param>
public readonly record struct ShuttleTurn(int Shuttle, ClothSide Side, int Pick, int NextPick);
