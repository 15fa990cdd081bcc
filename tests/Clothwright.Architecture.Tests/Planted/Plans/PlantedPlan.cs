namespace Clothwright.Architecture.Tests.Planted.Plans;

internal sealed class PlantedPlan
{
    public int Ends { get; init; }
}
