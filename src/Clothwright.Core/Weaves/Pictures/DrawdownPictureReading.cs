namespace Clothwright.Core.Weaves.Pictures;

/// <summary>What was found in a picture.</summary>
/// <param name="Drawdown">The drawdown.</param>
/// <param name="CellWidthPixels">Width of one crossing in pixels.</param>
/// <param name="CellHeightPixels">Height of one crossing in pixels.</param>
/// <param name="HasGridLines">Whether lines are drawn between the crossings.</param>
public sealed record DrawdownPictureReading(Drawdown Drawdown, double CellWidthPixels, double CellHeightPixels, bool HasGridLines);
