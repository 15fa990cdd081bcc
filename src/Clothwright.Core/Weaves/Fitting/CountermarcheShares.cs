namespace Clothwright.Core.Weaves.Fitting;

/// <summary>Ways of sharing many shafts among two treadles that promise few treadles, where trying all of them would take too long.</summary>
/// <remarks>
/// Pressed alike for every lift, a sharing takes as many treadles as the lifts have different parts on either side. On many shafts the side of
/// one shaft after another is changed, from several beginnings, while that number falls; each best sharing met is kept.
/// </remarks>
internal static class CountermarcheShares
{
    private const int MostKept = 48;

    // Up to so many shafts every sharing is looked at, 2^(n−1) − 1 of them.
    private const int MostShaftsTried = 16;

    /// <summary>The shafts of one of the two treadles, for each sharing; shaft 1 is always among them.</summary>
    /// <param name="lifts">The wanted lifts.</param>
    /// <param name="shafts">Shafts in use, 2 to 64.</param>
    public static IEnumerable<ulong> Promising(IReadOnlyList<ShaftSet> lifts, int shafts)
    {
        ulong all = ShaftSet.FirstOf(shafts).Bits;
        var found = new Dictionary<ulong, int>();
        if (shafts <= MostShaftsTried)
        {
            for (ulong part = 1; part < all; part += 2) Keep(part);
        }
        else
        {
            foreach (ulong beginning in Beginnings(all, shafts)) Keep(Improved(beginning, lifts, shafts, all));
            foreach (ulong beginning in Beginnings(all, shafts)) Keep(beginning);
        }

        return found.OrderBy(f => f.Value).ThenBy(f => f.Key).Take(MostKept).Select(f => f.Key);

        void Keep(ulong part)
        {
            if ((part & 1) == 0) part = all & ~part;
            if (part != all) found.TryAdd(part, Treadles(part, lifts, all));
        }
    }

    // Neighbouring shafts together, odd and even ones, and each pair and each run of a few against the rest.
    private static IEnumerable<ulong> Beginnings(ulong all, int shafts)
    {
        for (int cut = 1; cut < shafts; cut++) yield return ShaftSet.FirstOf(cut).Bits;
        yield return 0x5555555555555555UL & all;
        yield return 0x3333333333333333UL & all;
        for (int other = 2; other <= shafts; other++) yield return ShaftSet.Of(1, other).Bits;
        for (int first = 2; first + 2 <= shafts; first++) yield return ShaftSet.Of(first, first + 1, first + 2).Bits & all;
    }

    private static ulong Improved(ulong part, IReadOnlyList<ShaftSet> lifts, int shafts, ulong all)
    {
        for (int least = Treadles(part, lifts, all); ;)
        {
            ulong best = part;
            for (int shaft = 0; shaft < shafts; shaft++)
            {
                ulong other = part ^ (1UL << shaft);
                if (other == 0 || other == all) continue;
                int treadles = Treadles(other, lifts, all);
                if (treadles < least) (best, least) = (other, treadles);
            }

            if (best == part) return part;
            part = best;
        }
    }

    private static int Treadles(ulong part, IReadOnlyList<ShaftSet> lifts, ulong all)
    {
        var one = new HashSet<ulong>();
        var other = new HashSet<ulong>();
        foreach (ShaftSet lift in lifts)
        {
            one.Add(lift.Bits & part);
            other.Add(lift.Bits & all & ~part);
        }

        return one.Count + other.Count;
    }
}
