using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Fitting;

/// <content>Treadles that add up.</content>
public sealed partial record TieUpProblem
{
    // Beyond these the lists are cut and the answer is not called proved; a draft for hand treadling stays far below.
    private const int MostCandidates = 1500;
    private const int MostWays = 200_000;

    /// <summary>Treadles whose shafts add up: rising, sinking or counterbalance.</summary>
    /// <remarks>
    /// Only intersections of wanted lifts need to be considered: a treadle may be enlarged to the intersection of all
    /// lifts that use it, and no lift changes. The problem is the set basis problem (Garey and Johnson, SP7) with at most
    /// <paramref name="feet"/> sets to a union.
    /// </remarks>
    /// <param name="lifts">The wanted lifts, each different and not empty.</param>
    /// <param name="feet">Treadles that may be pressed at once, 1 or more.</param>
    /// <exception cref="ArgumentException">A lift is empty or comes twice.</exception>
    public static TieUpProblem Union(IReadOnlyList<ShaftSet> lifts, int feet)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(feet, 1);
        var seen = new HashSet<ulong>();
        foreach (ShaftSet lift in lifts)
        {
            if (lift.Bits == 0 || !seen.Add(lift.Bits)) throw new ArgumentException($"The lift {lift} is empty or comes twice.", nameof(lifts));
        }

        bool complete = true;
        List<ulong> candidates = feet == 1 ? [.. lifts.Select(l => l.Bits)] : Intersections(lifts, ref complete);
        var ways = ImmutableArray.CreateBuilder<ImmutableArray<ImmutableArray<int>>>(lifts.Count);
        int each = Math.Max(1, MostWays / Math.Max(1, lifts.Count));
        foreach (ShaftSet lift in lifts)
        {
            int[] inside = [.. Enumerable.Range(0, candidates.Count).Where(c => (candidates[c] & ~lift.Bits) == 0)];
            int room = each;
            var found = new List<ImmutableArray<int>> { ImmutableArray.Create(candidates.IndexOf(lift.Bits)) };
            Cover(candidates, inside, 0, lift.Bits, [], feet, found, ref room);
            complete &= room > 0;
            ways.Add([.. found]);
        }

        return new TieUpProblem(
            [.. candidates.Select(c => new TreadleTie(new ShaftSet(c), ShaftSet.None))], ways.MoveToImmutable(), feet, complete);
    }

    private static List<ulong> Intersections(IReadOnlyList<ShaftSet> lifts, ref bool complete)
    {
        var all = new List<ulong>();
        var known = new HashSet<ulong>();
        foreach (ShaftSet lift in lifts)
        {
            if (known.Add(lift.Bits)) all.Add(lift.Bits);
        }

        for (int i = 1; i < all.Count; i++)
        {
            for (int j = 0; j < Math.Min(i, lifts.Count); j++)
            {
                ulong both = all[i] & all[j];
                if (both == 0 || known.Contains(both)) continue;
                if (all.Count >= MostCandidates)
                {
                    complete = false;
                    return all;
                }

                known.Add(both);
                all.Add(both);
            }
        }

        return all;
    }

    // Adds every choice of at most `left` candidates that make up the lift, none of them idle.
    private static void Cover(
        List<ulong> candidates, int[] inside, int from, ulong lift, List<int> chosen, int left, List<ImmutableArray<int>> found, ref int room)
    {
        ulong union = 0;
        foreach (int c in chosen) union |= candidates[c];
        if (union == lift)
        {
            if (chosen.Count > 1 && NoneIdle(candidates, chosen, lift)) found.Add([.. chosen]);
            return;
        }

        if (left == 0) return;
        for (int i = from; i < inside.Length && room > 0; i++)
        {
            ulong added = candidates[inside[i]];
            if ((added & ~union) == 0 || (left == 1 && (union | added) != lift)) continue;
            if (left == 1) room--;
            chosen.Add(inside[i]);
            Cover(candidates, inside, i + 1, lift, chosen, left - 1, found, ref room);
            chosen.RemoveAt(chosen.Count - 1);
        }
    }

    private static bool NoneIdle(List<ulong> candidates, List<int> chosen, ulong lift)
    {
        for (int skipped = 0; skipped < chosen.Count; skipped++)
        {
            ulong rest = 0;
            for (int i = 0; i < chosen.Count; i++)
            {
                if (i != skipped) rest |= candidates[chosen[i]];
            }

            if (rest == lift) return false;
        }

        return true;
    }
}
