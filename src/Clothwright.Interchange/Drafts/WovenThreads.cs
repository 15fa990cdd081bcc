using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;

namespace Clothwright.Interchange.Drafts;

/// <summary>The threads of one system, first thread first. Each list is either empty (not described) or holds every thread.</summary>
public sealed record WovenThreads
{
    /// <summary>Threads of which nothing is said.</summary>
    public static WovenThreads Plain { get; } = new();

    /// <summary>Colour of each thread; empty if not described.</summary>
    public ImmutableArray<SrgbColour> Colours { get; init; } = [];

    /// <summary>Distance of each thread from the next, centre to centre, so that sett = 1 / spacing; empty if not described, 0 where unknown.</summary>
    public ImmutableArray<Length> Spacings { get; init; } = [];

    /// <summary>Diameter of each thread; empty if not described, 0 where unknown.</summary>
    public ImmutableArray<Length> Thicknesses { get; init; } = [];

    /// <summary>Makes sure that each list is empty or holds every thread.</summary>
    /// <param name="count">How many threads there are.</param>
    /// <exception cref="ArgumentException">A list holds another number.</exception>
    internal void RequireFor(int count)
    {
        foreach (int length in (ReadOnlySpan<int>)[Colours.Length, Spacings.Length, Thicknesses.Length])
        {
            if (length != 0 && length != count) throw new ArgumentException($"A list describes {length} threads of {count}; it holds every thread or none.", nameof(count));
        }
    }
}
