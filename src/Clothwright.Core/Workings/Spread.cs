using System.Collections.Immutable;

namespace Clothwright.Core.Workings;

/// <summary>How uncertain a number is, kept apart by cause so that causes shared by several inputs are not counted twice.</summary>
/// <remarks>
/// Linear propagation (first-order Taylor), as in the Guide to the Expression of Uncertainty in Measurement
/// (JCGM 100:2008, section 5, from memory): each cause has unit variance and moves the number by its share.
/// </remarks>
public sealed class Spread
{
    /// <summary>How many standard deviations above the middle leave 5 % of a normal distribution.</summary>
    public const double UpperNinetyFive = 1.6448536269514722;

    private Spread(ImmutableArray<SpreadShare> shares)
    {
        Shares = shares;
        double sum = 0;
        foreach (SpreadShare share in shares) sum += share.Movement * share.Movement;
        StandardDeviation = Math.Sqrt(sum);
    }

    /// <summary>No spread: the number is exact or decided.</summary>
    public static Spread None { get; } = new([]);

    /// <summary>The movements by cause, largest first.</summary>
    public ImmutableArray<SpreadShare> Shares { get; }

    /// <summary>Standard deviation, in the base unit of the number.</summary>
    public double StandardDeviation { get; }

    /// <summary>A spread by one cause.</summary>
    /// <param name="cause">The cause.</param>
    /// <param name="standardDeviation">Standard deviation in the base unit of the number; finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The standard deviation is below 0 or not finite.</exception>
    public static Spread Of(Cause cause, double standardDeviation)
    {
        if (!double.IsFinite(standardDeviation) || standardDeviation < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(standardDeviation), standardDeviation, "A standard deviation is a finite number, 0 or more.");
        }

        return standardDeviation == 0 ? None : new Spread([new SpreadShare(cause, standardDeviation)]);
    }

    /// <summary>Standard deviation of a value that lies anywhere in a range with equal chance: width / √12.</summary>
    /// <param name="low">Lower edge.</param>
    /// <param name="high">Upper edge; not below <paramref name="low"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The edges are exchanged or not finite.</exception>
    public static double OfRange(double low, double high) => double.IsFinite(low) && double.IsFinite(high) && high >= low
        ? (high - low) / Math.Sqrt(12)
        : throw new ArgumentOutOfRangeException(nameof(high), high, "A range runs from its lower to its upper edge, both finite.");

    /// <summary>The spread of a function of several numbers.</summary>
    /// <param name="inputs">For each input how much the result moves per unit of it, and the input's spread.</param>
    public static Spread Combine(IEnumerable<(double Slope, Spread Spread)> inputs)
    {
        // A number hangs on a few dozen causes at most, so a short list searched from the front beats a dictionary.
        var movements = new List<SpreadShare>();
        foreach ((double slope, Spread spread) in inputs)
        {
            if (slope == 0) continue;
            foreach (SpreadShare share in spread.Shares) Add(movements, share.Cause, slope * share.Movement);
        }

        movements.RemoveAll(m => m.Movement == 0);
        if (movements.Count == 0) return None;
        movements.Sort(LargestFirst);
        return new Spread([.. movements]);
    }

    private static void Add(List<SpreadShare> movements, Cause cause, double movement)
    {
        for (int i = 0; i < movements.Count; i++)
        {
            if (!movements[i].Cause.Equals(cause)) continue;
            movements[i] = new SpreadShare(cause, movements[i].Movement + movement);
            return;
        }

        movements.Add(new SpreadShare(cause, movement));
    }

    private static int LargestFirst(SpreadShare left, SpreadShare right)
    {
        int bySize = Math.Abs(right.Movement).CompareTo(Math.Abs(left.Movement));
        return bySize != 0 ? bySize : string.CompareOrdinal(left.Cause.Name, right.Cause.Name);
    }
}
