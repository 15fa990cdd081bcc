using System.Collections.Immutable;

namespace Clothwright.Core.Colours.Stripes;

/// <summary>Widths of stripes in whole threads.</summary>
public static class StripeWidths
{
    /// <summary>Threads shared out by weight: each its whole part, and what is over to the largest remainders, the first of equals first.</summary>
    /// <param name="weights">Weights, 0 or more, not all 0.</param>
    /// <param name="threads">Threads to share out, 0 or more.</param>
    /// <exception cref="ArgumentException">A weight is below 0 or no number, or all are 0.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The threads are below 0.</exception>
    public static ImmutableArray<int> Shared(IReadOnlyList<double> weights, int threads)
    {
        ArgumentNullException.ThrowIfNull(weights);
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        double sum = weights.Sum();
        if (weights.Any(w => !(w >= 0)) || !(sum > 0) || !double.IsFinite(sum)) throw new ArgumentException("Weights are 0 or more, and one at least is above 0.", nameof(weights));
        double[] exact = [.. weights.Select(w => w / sum * threads)];
        int[] widths = [.. exact.Select(e => (int)Math.Floor(e))];
        int over = threads - widths.Sum();
        // Remainders that differ by rounding alone count as equal.
        foreach (int i in Enumerable.Range(0, widths.Length).OrderByDescending(i => Math.Round(exact[i] - Math.Floor(exact[i]), 9)).ThenBy(i => i).Take(over)) widths[i]++;
        return [.. widths];
    }

    /// <summary>A proportional series in which each width is the sum of the two before: 1, 1, 2, 3, 5, 8 …</summary>
    /// <param name="count">How many, 1 to 80.</param>
    /// <param name="mirrored">Whether it goes back again from the widest, which stands once.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is outside 1 to 80.</exception>
    public static ImmutableArray<double> Summing(int count, bool mirrored = false)
    {
        if (count is < 1 or > 80) throw new ArgumentOutOfRangeException(nameof(count), count, "A series holds 1 to 80 widths.");
        var widths = new List<double>(count * 2);
        for (int i = 0; i < count; i++) widths.Add(i < 2 ? 1 : widths[i - 1] + widths[i - 2]);
        if (mirrored) widths.AddRange(Enumerable.Reverse(widths).Skip(1).ToArray());
        return [.. widths];
    }

    /// <summary>Widths by lot, each from the least to the most, summing to the threads.</summary>
    /// <param name="threads">Threads to fill, 1 or more.</param>
    /// <param name="least">Narrowest stripe, 1 or more.</param>
    /// <param name="most">Widest stripe, not below the narrowest; the last may be narrower.</param>
    /// <param name="seed">The seed.</param>
    /// <exception cref="ArgumentOutOfRangeException">A bound is out of range.</exception>
    public static ImmutableArray<int> ByLot(int threads, int least, int most, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(threads);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(least);
        ArgumentOutOfRangeException.ThrowIfLessThan(most, least);
        var lot = new SplitMix64(seed);
        var widths = ImmutableArray.CreateBuilder<int>();
        for (int left = threads; left > 0; left -= widths[^1]) widths.Add(Math.Min(left, least + (int)(lot.NextUnit() * (most - least + 1))));
        return widths.ToImmutable();
    }
}
