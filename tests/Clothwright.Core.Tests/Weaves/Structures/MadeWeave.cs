using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Tests.Weaves.Structures;

/// <summary>A weave made by chance within its limits, and the longest floats its rule allows (of either face).</summary>
/// <param name="Weave">One repeat.</param>
/// <param name="WarpLimit">Longest float along an end; <see cref="int.MaxValue"/> if the rule sets none.</param>
/// <param name="WeftLimit">Longest float along a pick.</param>
public sealed record MadeWeave(Weave Weave, int WarpLimit, int WeftLimit)
{
    /// <summary>The name, for messages of failing tests.</summary>
    public override string ToString() => $"{Weave.Name}: {Weave.Draft.Drawdown()}";
}
