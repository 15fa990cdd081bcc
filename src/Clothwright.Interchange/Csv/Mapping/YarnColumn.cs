namespace Clothwright.Interchange.Csv;

/// <summary>A column of someone's table of yarns, and what it is taken for.</summary>
/// <param name="Role">What it tells.</param>
/// <param name="Unit">The count system of a count, or the unit of a mass, where its cells do not say it; null if none.</param>
public sealed record YarnColumn(YarnColumnRole Role, string? Unit = null);
