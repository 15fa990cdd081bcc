using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Clothwright.Core.Weaves;

/// <summary>Which yarn each end or each pick is, over and over: the order of winding or of throwing.</summary>
/// <remarks>Yarns are numbered from 0 and written A, B, … Z, AA, AB, …; a run is written with its length in front: <c>4A 4B</c>.</remarks>
public sealed partial class ThreadOrder : IEquatable<ThreadOrder>
{
    private ThreadOrder(ImmutableArray<int> repeat) => Repeat = repeat;

    /// <summary>One yarn throughout.</summary>
    public static ThreadOrder OneYarn { get; } = new([0]);

    /// <summary>Yarn of each thread of one repeat, from 0; at least one.</summary>
    public ImmutableArray<int> Repeat { get; }

    /// <summary>Number of yarns: one more than the highest yarn in use.</summary>
    public int Yarns => Repeat.Max() + 1;

    /// <summary>Yarn of a thread; the repeat goes on for ever.</summary>
    /// <param name="thread">0-based end or pick.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="thread"/> is below 0.</exception>
    public int this[int thread]
    {
        get
        {
            ArgumentOutOfRangeException.ThrowIfNegative(thread);
            return Repeat[thread % Repeat.Length];
        }
    }

    /// <summary>An order from the yarns of its repeat.</summary>
    /// <param name="yarns">Yarn of each thread, from 0; at least one.</param>
    /// <exception cref="ArgumentException">There is no thread, or a yarn is below 0.</exception>
    public static ThreadOrder Of(params ReadOnlySpan<int> yarns)
    {
        if (yarns.IsEmpty) throw new ArgumentException("An order has at least one thread.", nameof(yarns));
        foreach (int yarn in yarns) ArgumentOutOfRangeException.ThrowIfNegative(yarn, nameof(yarns));
        return new ThreadOrder([.. yarns]);
    }

    /// <summary>The order seen from a later thread.</summary>
    /// <param name="first">0-based thread that becomes the first.</param>
    public ThreadOrder From(int first)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(first);
        int start = first % Repeat.Length;
        return start == 0 ? this : new ThreadOrder([.. Repeat[start..], .. Repeat[..start]]);
    }

    /// <summary>How many threads of each yarn there are in a number of threads.</summary>
    /// <param name="threads">Threads, 0 or more.</param>
    /// <returns>Threads by yarn, as many entries as there are yarns.</returns>
    public ImmutableArray<int> Counts(int threads)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        var counts = new int[Yarns];
        int whole = threads / Repeat.Length;
        foreach (int yarn in Repeat) counts[yarn] += whole;
        for (int i = 0; i < threads % Repeat.Length; i++) counts[Repeat[i]]++;
        return ImmutableArray.Create(counts);
    }

    /// <summary>The runs of one yarn in a number of threads, in order, as they are wound or thrown.</summary>
    /// <param name="threads">Threads, 0 or more.</param>
    public IEnumerable<(int Yarn, int Threads)> Runs(int threads)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        return Walk(threads);
    }

    /// <summary>The name of a yarn in an order: A for 0, Z for 25, AA for 26.</summary>
    /// <param name="yarn">From 0.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="yarn"/> is below 0.</exception>
    public static string YarnName(int yarn)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(yarn);
        string name = "";
        for (int rest = yarn; rest >= 0; rest = rest / 26 - 1) name = (char)('A' + rest % 26) + name;
        return name;
    }

    /// <inheritdoc />
    public bool Equals(ThreadOrder? other) => other is not null && Repeat.AsSpan().SequenceEqual(other.Repeat.AsSpan());

    /// <inheritdoc />
    public override bool Equals(object? obj) => Equals(obj as ThreadOrder);

    /// <inheritdoc />
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (int yarn in Repeat) hash.Add(yarn);
        return hash.ToHashCode();
    }

    /// <summary>The repeat run by run, for example <c>4A 4B</c>.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        foreach ((int yarn, int threads) in Runs(Repeat.Length))
        {
            if (text.Length > 0) text.Append(' ');
            if (threads > 1) text.Append(threads.ToString(CultureInfo.InvariantCulture));
            text.Append(YarnName(yarn));
        }

        return text.ToString();
    }

    private IEnumerable<(int Yarn, int Threads)> Walk(int threads)
    {
        for (int first = 0; first < threads;)
        {
            int next = first + 1;
            while (next < threads && this[next] == this[first]) next++;
            yield return (this[first], next - first);
            first = next;
        }
    }
}
