using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.RigidHeddles;

/// <summary>The closest sett that rigid heddles allow for a threading.</summary>
public static class RigidHeddleSett
{
    /// <summary>The fullest heddle decides: everything not in its eyes shares its slots.</summary>
    public static Rule Rule { get; } = new(
        "greatest sett of rigid heddles",
        "least over the heddles of (N/2) × ends in the repeat ÷ ends in that heddle's eyes; N = eyes and slots to the width",
        Source.Derivation);

    /// <summary>The greatest sett without ends fanning out.</summary>
    /// <param name="heddle">The heddles, all of one number.</param>
    /// <param name="heddles">How many are used, 1 to 4.</param>
    /// <param name="groups">Group of each end of a repeat: heddle number for its eyes, heddles + 1 for slots.</param>
    /// <exception cref="ArgumentOutOfRangeException">A group is not there.</exception>
    /// <exception cref="ArgumentException">No end is in an eye.</exception>
    public static Derived<Sett> Greatest(RigidHeddle heddle, int heddles, IReadOnlyList<int> groups)
    {
        ArgumentNullException.ThrowIfNull(heddle);
        double times = GreatestTimes(heddles, groups);
        Derived<Sett> number = Derived.Decision($"number of the {heddle.Name} heddle", heddle.Spaces);
        Derived<Ratio> factor = Derived.Given("ends in the repeat ÷ twice the ends in the fullest heddle's eyes", Ratio.FromValue(times), Source.Derivation, formula: "q ÷ (2 f)");
        return Derived.From<Sett>("greatest sett", Rule, number, factor, (n, f) => n * f);
    }

    /// <summary>The greatest sett as a multiple of the heddles' number.</summary>
    /// <param name="heddles">How many are used, 1 to 4.</param>
    /// <param name="groups">Group of each end of a repeat.</param>
    public static double GreatestTimes(int heddles, IReadOnlyList<int> groups)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(heddles, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(heddles, RigidHeddleShed.MostHeddles);
        var ends = new int[heddles + 2];
        foreach (int group in groups)
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(group, 1, nameof(groups));
            ArgumentOutOfRangeException.ThrowIfGreaterThan(group, heddles + 1, nameof(groups));
            ends[group]++;
        }

        int fullest = ends[1..(heddles + 1)].Max();
        return fullest > 0 ? groups.Count / (2.0 * fullest) : throw new ArgumentException("No end is in an eye, so no heddle limits the sett.", nameof(groups));
    }
}
