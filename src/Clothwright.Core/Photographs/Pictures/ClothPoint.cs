namespace Clothwright.Core.Photographs.Pictures;

/// <summary>A place on the plane of the cloth, seen square on.</summary>
/// <param name="XMillimetres">Millimetres to the right.</param>
/// <param name="YMillimetres">Millimetres down.</param>
public readonly record struct ClothPoint(double XMillimetres, double YMillimetres);
