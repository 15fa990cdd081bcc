using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>How many neighbouring threads work as one, group after group, for example 2/2; an even number of groups.</summary>
public sealed record ThreadGroups
{
    private ThreadGroups(ImmutableArray<int> sizes) => Sizes = sizes;

    /// <summary>Every thread by itself.</summary>
    public static ThreadGroups Single { get; } = new([1, 1]);

    /// <summary>Threads in each group, 1 to 32, an even number of groups.</summary>
    public ImmutableArray<int> Sizes { get; }

    /// <summary>Shaft 1 or 2 of each thread: the groups by turns.</summary>
    public int[] Order => [.. Sizes.SelectMany((size, i) => Enumerable.Repeat(i % 2 + 1, size))];

    /// <summary>Groups of given sizes.</summary>
    /// <param name="sizes">Threads in each group, 1 to 32; an odd number of groups is gone through twice.</param>
    /// <exception cref="InputProblemException">There is no group, or one is out of range.</exception>
    public static ThreadGroups Of(params ReadOnlySpan<int> sizes)
    {
        foreach (int size in sizes)
        {
            if (size is < 1 or > 32) throw new InputProblemException(Problem(string.Join('/', sizes.ToArray())));
        }

        return sizes.IsEmpty
            ? throw new InputProblemException(Problem(""))
            : new ThreadGroups(sizes.Length % 2 == 0 ? [.. sizes] : [.. sizes, .. sizes]);
    }

    /// <summary>Reads groups such as <c>2/2</c>, <c>3/1</c> or <c>4</c>.</summary>
    /// <param name="text">Whole numbers with a slash between.</param>
    public static Parsed<ThreadGroups> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var sizes = new List<int>();
        foreach (string part in text.Split('/'))
        {
            if (!int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out int size) || size is < 1 or > 32 || sizes.Count == 32) return Problem(text);
            sizes.Add(size);
        }

        return Of([.. sizes]);
    }

    /// <summary>The sizes with a slash between.</summary>
    public override string ToString() => string.Join('/', Sizes);

    private static InputProblem Problem(string text) =>
        new($"\"{text}\" does not say how the threads are grouped.", "groups", "Write groups of 1 to 32 threads with a slash between, for example 2/2.") { Text = text, Position = 0 };
}
