using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>The figures of a twill: ends up, down, up, down … along a pick, warp first, for example 2/2 or 5/2/1/2.</summary>
public sealed record TwillBase
{
    private TwillBase(ImmutableArray<int> runs)
    {
        Runs = runs;
        Shafts = runs.Sum();
    }

    /// <summary>Ends up, down, up, down …: an even number of runs, each above 0.</summary>
    public ImmutableArray<int> Runs { get; }

    /// <summary>Ends in a repeat, and shafts on a straight draw: the sum of the runs, 2 to 64.</summary>
    public int Shafts { get; }

    /// <summary>Longest run of either thread along a line: the longest float of the straight twill.</summary>
    public int LongestFloat => Runs.Max();

    /// <summary>Whether the half repeat is the complement of the other half, so that opposite shafts always oppose (2/2, 3/3, 2/1/1/2/1/1).</summary>
    public bool IsHalfAndHalf => Shafts % 2 == 0 && Enumerable.Range(0, Shafts / 2).All(i => IsUp(i) != IsUp(i + Shafts / 2));

    /// <summary>A twill from its runs.</summary>
    /// <param name="runs">Ends up, down, up, down …</param>
    /// <exception cref="InputProblemException">The runs are odd in number, one is below 1, or they sum to more than 64.</exception>
    public static TwillBase Of(params ReadOnlySpan<int> runs) =>
        IsGood(runs) ? new TwillBase([.. runs]) : throw new InputProblemException(Problem(string.Join('/', runs.ToArray())));

    /// <summary>Reads figures such as <c>2/2</c>, <c>3/1</c> or <c>5/2/1/2</c>.</summary>
    /// <param name="text">Whole numbers with a slash between, an even number of them.</param>
    public static Parsed<TwillBase> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var runs = new List<int>();
        foreach (string part in text.Split('/'))
        {
            if (!int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out int run) || run > ShaftSet.Highest) return Problem(text);
            runs.Add(run);
        }

        return IsGood([.. runs]) ? new TwillBase([.. runs]) : Problem(text);
    }

    /// <summary>Whether the warp is up at a place along the first pick.</summary>
    /// <param name="place">0-based place, counted round the repeat; may be below 0.</param>
    public bool IsUp(int place)
    {
        int rest = ((place % Shafts) + Shafts) % Shafts;
        for (int i = 0; i < Runs.Length; i++)
        {
            if (rest < Runs[i]) return i % 2 == 0;
            rest -= Runs[i];
        }

        return false;
    }

    /// <summary>The shafts that each treadle lifts: the first as the figures say, each further one a shaft higher.</summary>
    public ImmutableArray<ShaftSet> TieUp =>
        [.. Enumerable.Range(0, Shafts).Select(t => ShaftSet.Of([.. Enumerable.Range(1, Shafts).Where(s => IsUp(s - 1 - t))]))];

    /// <inheritdoc />
    public bool Equals(TwillBase? other) => other is not null && Runs.SequenceEqual(other.Runs);

    /// <inheritdoc />
    public override int GetHashCode() => Runs.Aggregate(17, HashCode.Combine);

    /// <summary>The figures with a slash between.</summary>
    public override string ToString() => string.Join('/', Runs);

    private static bool IsGood(ReadOnlySpan<int> runs)
    {
        if (runs.IsEmpty || runs.Length % 2 != 0 || runs.Length > ShaftSet.Highest) return false;
        int sum = 0;
        foreach (int run in runs)
        {
            if (run is < 1 or > ShaftSet.Highest) return false;
            sum += run;
        }

        return sum <= ShaftSet.Highest;
    }

    private static InputProblem Problem(string text) => new(
        $"\"{text}\" are not the figures of a twill.",
        "base",
        "Write ends up and down by turns with a slash between, an even number of figures that sum to 64 at most, for example 2/2 or 5/2/1/2.")
    { Text = text, Position = 0 };
}
