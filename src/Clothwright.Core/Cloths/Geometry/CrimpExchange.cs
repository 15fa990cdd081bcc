namespace Clothwright.Core.Cloths.Geometry;

/// <summary>A cloth after crimp has passed from one system to the other.</summary>
/// <param name="OwnHeight">Crimp height of the system that was drawn.</param>
/// <param name="OtherHeight">Crimp height of the other system.</param>
/// <param name="OtherPitch">Crossing pitch along the other system.</param>
public readonly record struct CrimpExchange(double OwnHeight, double OtherHeight, double OtherPitch);
