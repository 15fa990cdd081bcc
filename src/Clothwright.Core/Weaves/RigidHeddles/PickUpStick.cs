using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.RigidHeddles;

/// <summary>A pick-up stick behind the heddles: it holds chosen slot ends and raises them.</summary>
/// <remarks>With the heddles at rest its ends rise alone, with a heddle up they join that heddle's eye ends (common practice, no source).</remarks>
/// <param name="Number">From 1.</param>
/// <param name="Ends">0-based ends on the stick.</param>
public sealed record PickUpStick(int Number, ImmutableArray<int> Ends)
{
    /// <inheritdoc />
    public bool Equals(PickUpStick? other) => other is not null && Number == other.Number && Ends.SequenceEqual(other.Ends);

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Number, Ends.Length);
}
