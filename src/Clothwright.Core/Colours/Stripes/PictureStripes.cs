using System.Collections.Immutable;

namespace Clothwright.Core.Colours.Stripes;

/// <summary>An order of yarns that follows the colours of a picture from one side to the other.</summary>
public static class PictureStripes
{
    /// <summary>The yarn of each thread: that whose colour is nearest to the picture's where the thread lies, by CIEDE2000.</summary>
    /// <remarks>A thread's part of the picture is mixed as light is before it is compared; the first of equally near yarns is taken.</remarks>
    /// <param name="across">Light of the picture's columns, or rows, from the first thread's side on; at least one.</param>
    /// <param name="yarns">Colours of the yarns; at least one.</param>
    /// <param name="threads">Threads to lay, 0 or more.</param>
    /// <returns>Number of the yarn, thread by thread, 0-based.</returns>
    /// <exception cref="ArgumentException">There is no column or no yarn.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The threads are below 0.</exception>
    public static ImmutableArray<int> Laid(IReadOnlyList<LinearColour> across, IReadOnlyList<SrgbColour> yarns, int threads)
    {
        ArgumentNullException.ThrowIfNull(across);
        ArgumentNullException.ThrowIfNull(yarns);
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        if (across.Count == 0) throw new ArgumentException("A picture has a column at least.", nameof(across));
        if (yarns.Count == 0) throw new ArgumentException("Stripes need a yarn.", nameof(yarns));
        CieLab[] colours = [.. yarns.Select(y => CieLab.From(y))];
        return [.. Enumerable.Range(0, threads).Select(thread => Nearest(CieLab.From(Mean(across, thread, threads)), colours))];
    }

    // Light of the columns under one thread, those that it covers in part by the part.
    private static LinearColour Mean(IReadOnlyList<LinearColour> across, int thread, int threads)
    {
        double wide = (double)across.Count / threads;
        (double from, double to) = (thread * wide, (thread + 1) * wide);
        LinearColour light = default;
        for (int column = (int)from; column < Math.Min(across.Count, (int)Math.Ceiling(to)); column++)
        {
            light += across[column] * Math.Max(0, Math.Min(to, column + 1) - Math.Max(from, column));
        }

        return light * (1 / wide);
    }

    private static int Nearest(CieLab seen, CieLab[] colours) => Enumerable.Range(0, colours.Length).MinBy(i => ColourDifference.Ciede2000(seen, colours[i]));
}
