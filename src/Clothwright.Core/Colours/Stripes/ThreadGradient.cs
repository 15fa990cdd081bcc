using System.Collections.Immutable;

namespace Clothwright.Core.Colours.Stripes;

/// <summary>A passage from one yarn to another by threads: the second comes in ever more often, as evenly as whole threads allow.</summary>
public static class ThreadGradient
{
    /// <summary>Which of two yarns each thread is; true is the second.</summary>
    /// <remarks>The share of the second at thread k of n is (k + ½) ÷ n; it is carried from thread to thread and laid once it makes half a thread.</remarks>
    /// <param name="threads">Threads of the passage, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The threads are below 0.</exception>
    public static ImmutableArray<bool> Between(int threads)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        var second = ImmutableArray.CreateBuilder<bool>(threads);
        double carried = 0;
        for (int k = 0; k < threads; k++)
        {
            carried += (k + 0.5) / threads;
            bool laid = carried >= 0.5;
            if (laid) carried--;
            second.Add(laid);
        }

        return second.MoveToImmutable();
    }

    /// <summary>A passage through several yarns, each to the next.</summary>
    /// <param name="yarns">Yarns to pass through, 2 or more.</param>
    /// <param name="threads">Threads of the whole, 0 or more.</param>
    /// <returns>Number of the yarn, thread by thread, 0-based.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than 2 yarns, or the threads are below 0.</exception>
    public static ImmutableArray<int> Through(int yarns, int threads)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(yarns, 2);
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        ImmutableArray<int> parts = StripeWidths.Shared([.. Enumerable.Repeat(1.0, yarns - 1)], threads);
        return [.. parts.SelectMany((length, from) => Between(length).Select(second => second ? from + 1 : from))];
    }
}
