using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Results;

/// <summary>Where the work could hurt someone: said wherever the plan is shown. Local codes come first.</summary>
/// <param name="Id">Short name, stable, for example <c>child-fringe</c>.</param>
/// <param name="Text">What can happen and what to do, in full sentences.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Caution(string Id, string Text, Source Source)
{
    /// <summary>The piece it concerns, 0-based; null for the whole work.</summary>
    public int? PieceIndex { get; init; }

    /// <inheritdoc />
    public override string ToString() => Text;
}
