using System.Collections;
using System.Collections.Immutable;

namespace Clothwright.Interchange.Wif;

/// <summary>Lines of a section that are numbered (threads, treadles, colours, notes). Numbers may be left out; they rise and none comes twice.</summary>
/// <typeparam name="T">What stands behind a number.</typeparam>
public sealed class WifNumbered<T> : IReadOnlyList<KeyValuePair<int, T>>, IEquatable<WifNumbered<T>>
    where T : notnull
{
    private readonly ImmutableArray<KeyValuePair<int, T>> _lines;

    internal WifNumbered(ImmutableArray<KeyValuePair<int, T>> lines) => _lines = lines;

    /// <inheritdoc />
    public int Count => _lines.Length;

    /// <summary>The highest number, or 0 if there are no lines.</summary>
    public int Highest => _lines.IsEmpty ? 0 : _lines[^1].Key;

    /// <inheritdoc />
    public KeyValuePair<int, T> this[int index] => _lines[index];

    /// <summary>Finds a line.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="value">What stands behind it, when this returns true.</param>
    public bool TryGet(int number, [System.Diagnostics.CodeAnalysis.MaybeNullWhen(false)] out T value)
    {
        int low = 0;
        int high = _lines.Length - 1;
        while (low <= high)
        {
            int middle = (low + high) >>> 1;
            int key = _lines[middle].Key;
            if (key == number)
            {
                value = _lines[middle].Value;
                return true;
            }

            if (key < number) low = middle + 1;
            else high = middle - 1;
        }

        value = default;
        return false;
    }

    /// <inheritdoc />
    public IEnumerator<KeyValuePair<int, T>> GetEnumerator() => ((IEnumerable<KeyValuePair<int, T>>)_lines).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc />
    public bool Equals(WifNumbered<T>? other) => other is not null && _lines.AsSpan().SequenceEqual(other._lines.AsSpan());

    /// <inheritdoc />
    public override bool Equals(object? obj) => Equals(obj as WifNumbered<T>);

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Count, Highest);
}
