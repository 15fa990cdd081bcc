using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>All floats of one kind, by length, with the longest and where it is.</summary>
/// <param name="Kind">Which thread floats, on which face.</param>
/// <param name="Counts">How many floats of each length, shortest first; endless ones are not among them.</param>
/// <param name="EndlessThreads">Threads that lie on this side throughout the repeat; 0 when read as cut.</param>
/// <param name="Longest">The longest float, the first of several alike: lowest line, then lowest start; an endless one before any other. Null if there is none of this kind.</param>
public sealed record FloatTally(FloatKind Kind, ImmutableArray<FloatCount> Counts, long EndlessThreads, ThreadFloat? Longest)
{
    /// <summary>Length of the longest float in threads; 0 if there is none, <see cref="int.MaxValue"/> if one is endless.</summary>
    public int LongestLength => Longest is not { } longest ? 0 : longest.Endless ? int.MaxValue : longest.Length;

    /// <summary>Number of floats of this kind, plain crossings among them.</summary>
    public long Total => Counts.Sum(c => c.Times);

    /// <summary>Mean length in threads; 0 if there is none.</summary>
    public double MeanLength => Counts.IsEmpty ? 0 : Counts.Sum(c => (double)c.Length * c.Times) / Total;

    /// <summary>How many floats have a length.</summary>
    /// <param name="length">Threads passed.</param>
    public long Times(int length) => Counts.FirstOrDefault(c => c.Length == length).Times;
}
