using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Analysis.Layers;

/// <summary>Threads that hold each other and can be lifted off whatever lies below them.</summary>
/// <param name="Ends">0-based ends, rising.</param>
/// <param name="Picks">0-based picks, rising.</param>
public sealed record ClothLayer(ImmutableArray<int> Ends, ImmutableArray<int> Picks)
{
    /// <summary>A single end or pick that nothing holds, rather than a layer of cloth.</summary>
    public bool IsLooseThread => Ends.Length + Picks.Length == 1;

    /// <inheritdoc />
    public bool Equals(ClothLayer? other) => other is not null
        && Ends.AsSpan().SequenceEqual(other.Ends.AsSpan()) && Picks.AsSpan().SequenceEqual(other.Picks.AsSpan());

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(
        Ends.Length, Picks.Length, Ends.IsEmpty ? -1 : Ends[0], Picks.IsEmpty ? -1 : Picks[0]);

    /// <summary>Counted from 1, for example <c>picks 1 3 with ends 1 3</c>, <c>pick 3</c>.</summary>
    public override string ToString() => (Ends.Length, Picks.Length) switch
    {
        (0, 1) => $"pick {Picks[0] + 1}",
        (1, 0) => $"end {Ends[0] + 1}",
        _ => $"picks {Numbers(Picks)} with ends {Numbers(Ends)}",
    };

    private static string Numbers(ImmutableArray<int> threads) => string.Join(' ', threads.Select(t => t + 1));
}
