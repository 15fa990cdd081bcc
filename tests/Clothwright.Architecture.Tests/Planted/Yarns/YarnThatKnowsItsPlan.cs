using Clothwright.Architecture.Tests.Planted.Plans;

namespace Clothwright.Architecture.Tests.Planted.Yarns;

// Breaks the order on purpose, inside a method body, so that the check is seen to fail.
internal static class YarnThatKnowsItsPlan
{
    public static int Ends() => new PlantedPlan { Ends = 4 }.Ends;
}
