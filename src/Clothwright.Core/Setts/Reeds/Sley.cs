using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Setts.Reeds;

/// <summary>How many ends go into each dent, over and over: <c>1-1-2</c>.</summary>
public sealed class Sley : IEquatable<Sley>
{
    /// <summary>Dents in a sequence, at most; a longer one cannot be kept in the head.</summary>
    public const int LongestSequence = 24;

    /// <summary>Ends that one dent can hold, at most.</summary>
    public const int MostEndsInADent = 12;

    private Sley(ImmutableArray<int> endsPerDent) => EndsPerDent = endsPerDent;

    /// <summary>Ends in each dent of the sequence; at least one dent and one end.</summary>
    public ImmutableArray<int> EndsPerDent { get; }

    /// <summary>Ends in the sequence.</summary>
    public int Ends => EndsPerDent.Sum();

    /// <summary>Dents in the sequence.</summary>
    public int Dents => EndsPerDent.Length;

    /// <summary>Mean ends in a dent.</summary>
    public double MeanEndsPerDent => (double)Ends / Dents;

    /// <summary>Whether every dent holds the same.</summary>
    public bool IsEven => EndsPerDent.All(e => e == EndsPerDent[0]);

    /// <summary>A sequence as given.</summary>
    /// <param name="endsPerDent">Ends in each dent, 0 or more; not all 0.</param>
    /// <exception cref="ArgumentException">There is no dent, no end, or a dent holds fewer than 0.</exception>
    public static Sley Of(params ReadOnlySpan<int> endsPerDent)
    {
        ImmutableArray<int> dents = [.. endsPerDent];
        return dents.Length > 0 && dents.All(e => e >= 0) && dents.Sum() > 0
            ? new Sley(dents)
            : throw new ArgumentException("A sley has at least one dent and one end, and no dent holds fewer than 0.", nameof(endsPerDent));
    }

    /// <summary>Ends spread as evenly as they go: dent k takes ⌊(k+1) n ÷ N⌋ − ⌊k n ÷ N⌋, so that dents differ by one at most.</summary>
    /// <param name="ends">Ends in the sequence, above 0.</param>
    /// <param name="dents">Dents in the sequence, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Either is below 1.</exception>
    public static Sley Even(int ends, int dents)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(ends, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(dents, 1);
        return new Sley([.. Enumerable.Range(0, dents).Select(k => (int)((long)(k + 1) * ends / dents - (long)k * ends / dents))]);
    }

    /// <summary>Reads a sequence.</summary>
    /// <param name="text">Whole numbers with hyphens, blanks or commas between, for example <c>1-1-2</c>.</param>
    public static Parsed<Sley> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var dents = new List<int>();
        foreach (string part in text.Split(['-', ' ', ','], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (!int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out int ends) || ends > MostEndsInADent)
            {
                return Bad($"\"{part}\" is not a number of ends in a dent.");
            }

            dents.Add(ends);
        }

        if (dents.Count is 0 or > LongestSequence) return Bad($"A sley of {dents.Count} dents cannot be used.");
        return dents.Sum() == 0 ? Bad($"\"{text}\" leaves every dent empty.") : Of([.. dents]);

        InputProblem Bad(string what) => new(
            what,
            "sley",
            $"Write the ends in each dent, up to {MostEndsInADent} each and {LongestSequence} dents, for example 1-1-2.")
        { Text = text, Position = 0 };
    }

    /// <summary>The sett that this sley gives.</summary>
    /// <param name="dents">Dents of the reed, per width.</param>
    public Sett In(Sett dents) => dents * MeanEndsPerDent;

    /// <summary>Ends in a dent.</summary>
    /// <param name="dent">0-based dent; the sequence goes on for ever.</param>
    public int this[int dent] => EndsPerDent[dent % Dents];

    /// <inheritdoc />
    public bool Equals(Sley? other) => other is not null && EndsPerDent.AsSpan().SequenceEqual(other.EndsPerDent.AsSpan());

    /// <inheritdoc />
    public override bool Equals(object? obj) => Equals(obj as Sley);

    /// <inheritdoc />
    public override int GetHashCode() => EndsPerDent.Aggregate(17, HashCode.Combine);

    /// <summary>The sequence with hyphens, for example <c>1-1-2</c>.</summary>
    public override string ToString() => string.Join('-', EndsPerDent);
}
