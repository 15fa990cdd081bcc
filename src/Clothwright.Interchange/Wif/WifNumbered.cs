using System.Collections.Immutable;

namespace Clothwright.Interchange.Wif;

/// <summary>Makes <see cref="WifNumbered{T}"/>.</summary>
public static class WifNumbered
{
    /// <summary>No lines.</summary>
    /// <typeparam name="T">What would stand behind a number.</typeparam>
    public static WifNumbered<T> None<T>()
        where T : notnull => new([]);

    /// <summary>Puts numbered lines in order; of lines with the same number the first is kept.</summary>
    /// <typeparam name="T">What stands behind a number.</typeparam>
    /// <param name="lines">The lines, in any order.</param>
    public static WifNumbered<T> Of<T>(IEnumerable<KeyValuePair<int, T>> lines)
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(lines);

        // Sorting by LINQ is stable, so the first of two equal numbers stays first.
        ImmutableArray<KeyValuePair<int, T>> sorted = [.. lines.OrderBy(line => line.Key)];
        for (int i = 1; i < sorted.Length; i++)
        {
            if (sorted[i].Key == sorted[i - 1].Key) return new([.. sorted.DistinctBy(line => line.Key)]);
        }

        return new(sorted);
    }

    /// <summary>Numbers a list from 1, leaving out what goes without saying.</summary>
    /// <typeparam name="T">What stands behind a number.</typeparam>
    /// <param name="items">The list, first item first.</param>
    /// <param name="unsaid">What is not written.</param>
    public static WifNumbered<T> Sparse<T>(ReadOnlySpan<T> items, T unsaid)
        where T : notnull, IEquatable<T>
    {
        var lines = ImmutableArray.CreateBuilder<KeyValuePair<int, T>>();
        for (int i = 0; i < items.Length; i++)
        {
            if (!items[i].Equals(unsaid)) lines.Add(new(i + 1, items[i]));
        }

        return new(lines.ToImmutable());
    }
}
