namespace Clothwright.Core.Cloths.Look.Places;

/// <summary>One column, or one row, of points of a picture: the same numbers serve processor and graphics card, so that both see the same edges.</summary>
/// <param name="Place">0-based place; −1 outside the cloth.</param>
/// <param name="Neighbour">The place on the side of its middle on which the point lies; may be outside the cloth.</param>
/// <param name="Thread">First thread of the place.</param>
/// <param name="Offset">Millimetres from the middle of the place, as seen.</param>
/// <param name="Rise">Share of the way to the neighbour's height, 0 to ½.</param>
/// <param name="Slope">Steepness of that way as seen, −1 to 1.</param>
/// <param name="Seen">Millimetres from the left or lower edge, as seen.</param>
/// <param name="Cloth">Millimetres from the left or lower edge of the face.</param>
public readonly record struct PlaceSample(int Place, int Neighbour, int Thread, float Offset, float Rise, float Slope, float Seen, float Cloth);
