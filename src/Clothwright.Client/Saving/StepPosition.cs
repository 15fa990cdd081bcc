namespace Clothwright.Client.Saving;

/// <summary>Where a worksheet stands in its steps, as every tab of this browser shares it.</summary>
/// <param name="Place">Step that is shown; -1 where nothing is kept.</param>
/// <param name="Last">Newest step that is kept.</param>
/// <param name="Revision">Counts every write of any tab.</param>
internal sealed record StepPosition(int Place, int Last, int Revision);
