using System.Collections.Immutable;
using System.Numerics;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>Treadles set out so that left and right feet take turns.</summary>
/// <param name="Order">For each treadle as numbered before, its new number; 1 is at the far left.</param>
/// <param name="Left">So many treadles, the first, belong to the left foot.</param>
/// <param name="Alternating">Steps from pick to pick, round the repeat, on which the foot changes.</param>
/// <param name="Steps">Steps on which the treadle changes, each pressed alone.</param>
/// <param name="Split">Picks of two treadles that take one with each foot.</param>
/// <param name="Doubles">Picks of two treadles.</param>
/// <param name="Best">Whether no other order alternates more.</param>
public sealed record TreadleWalk(ImmutableArray<int> Order, int Left, int Alternating, int Steps, int Split, int Doubles, bool Best)
{
    // All sharings among two feet are tried up to so many treadles.
    private const int MostTriedInFull = 16;

    /// <summary>Whether the feet take turns on every pick.</summary>
    public bool Walks => Alternating == Steps && Split == Doubles;

    /// <summary>Lays out treadles.</summary>
    /// <param name="treadles">Treadles, 0 to 64.</param>
    /// <param name="treadling">Treadles pressed, pick by pick.</param>
    public static TreadleWalk Lay(int treadles, IReadOnlyList<ShaftSet> treadling)
    {
        var pairs = new int[treadles, treadles];
        var turns = new int[treadles, treadles];
        int steps = 0, doubles = 0;
        for (int pick = 0; pick < treadling.Count; pick++)
        {
            ShaftSet here = treadling[pick], next = treadling[(pick + 1) % treadling.Count];
            if (here.Count == 2)
            {
                doubles++;
                pairs[BitOperations.TrailingZeroCount(here.Bits), here.Max - 1]++;
            }
            else if (here.Count == 1 && next.Count == 1 && here != next)
            {
                steps++;
                turns[here.Max - 1, next.Max - 1]++;
            }
        }

        var (left, best) = treadles <= MostTriedInFull ? (TryAll(treadles, pairs, turns), true) : (Improve(treadles, pairs, turns), false);
        int split = Crossing(pairs, left), alternating = Crossing(turns, left);
        return new TreadleWalk(
            Places(treadles, treadling, left), BitOperations.PopCount(left), alternating, steps, split, doubles,
            best || (split == doubles && alternating == steps));
    }

    private static int Crossing(int[,] weights, ulong left)
    {
        int sum = 0, n = weights.GetLength(0);
        for (int a = 0; a < n; a++)
        {
            for (int b = 0; b < n; b++)
            {
                if (((left >> a ^ left >> b) & 1) != 0) sum += weights[a, b];
            }
        }

        return sum;
    }

    private static (int Split, int Alternating, int Balance) Score(int treadles, int[,] pairs, int[,] turns, ulong left) =>
        (Crossing(pairs, left), Crossing(turns, left), -Math.Abs(treadles - 2 * BitOperations.PopCount(left)));

    // The first treadle stays with the left foot: exchanging the feet changes nothing.
    private static ulong TryAll(int treadles, int[,] pairs, int[,] turns)
    {
        if (treadles == 0) return 0;
        ulong best = 1;
        var score = Score(treadles, pairs, turns, best);
        for (ulong left = 3; left < 1UL << treadles; left += 2)
        {
            var other = Score(treadles, pairs, turns, left);
            if (other.CompareTo(score) > 0) (best, score) = (left, other);
        }

        return best;
    }

    private static ulong Improve(int treadles, int[,] pairs, int[,] turns)
    {
        ulong left = 0x5555555555555555UL & ShaftSet.FirstOf(treadles).Bits;
        var score = Score(treadles, pairs, turns, left);
        for (bool better = true; better;)
        {
            better = false;
            for (int t = 1; t < treadles; t++)
            {
                var other = Score(treadles, pairs, turns, left ^ 1UL << t);
                if (other.CompareTo(score) <= 0) continue;
                (left, score, better) = (left ^ 1UL << t, other, true);
            }
        }

        return left;
    }

    // Each foot works from the outside in, by first use.
    private static ImmutableArray<int> Places(int treadles, IReadOnlyList<ShaftSet> treadling, ulong left)
    {
        int[] byUse = [.. treadling.SelectMany(p => p.Members()).Where(t => t <= treadles).Concat(Enumerable.Range(1, treadles)).Distinct()];
        int[] place = new int[treadles];
        int fromLeft = 1, fromRight = treadles;
        foreach (int t in byUse) place[t - 1] = (left >> (t - 1) & 1) != 0 ? fromLeft++ : fromRight--;
        return [.. place];
    }
}
