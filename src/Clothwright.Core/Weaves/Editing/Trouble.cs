using System.Collections.Immutable;
using Clothwright.Core.Weaves.Analysis.Floats;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>One thing that is the matter with a draft, with the places where it is seen.</summary>
/// <param name="Kind">What is the matter.</param>
/// <param name="Spots">Where, the first <see cref="Troubles.MostSpots"/> of them.</param>
/// <param name="Times">In how many places altogether.</param>
public sealed record Trouble(TroubleKind Kind, ImmutableArray<TroubleSpot> Spots, long Times)
{
    /// <summary>For floats: which thread, on which face; null otherwise.</summary>
    public FloatKind? Float { get; init; }

    /// <summary>For floats: threads that the longest passes; for layers: how many; 0 otherwise.</summary>
    public int Longest { get; init; }
}
