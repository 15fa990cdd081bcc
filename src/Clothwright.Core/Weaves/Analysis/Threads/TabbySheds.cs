using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Analysis.Threads;

/// <summary>The two sheds of plain weave on a threading.</summary>
/// <param name="OddEnds">Shafts that move ends 1, 3, 5, … and no others.</param>
/// <param name="EvenEnds">Shafts that move ends 2, 4, 6, … and no others.</param>
public sealed record TabbySheds(ShaftSet OddEnds, ShaftSet EvenEnds)
{
    /// <summary>Finds the sheds: possible exactly when the shafts of no even end are needed to move an odd one, nor the other way about.</summary>
    /// <param name="threading">Which shafts each end is on.</param>
    /// <returns>The sheds; null if plain weave cannot be woven on this threading, or there is one end only.</returns>
    public static TabbySheds? On(ImmutableArray<ShaftSet> threading)
    {
        if (threading.Length < 2) return null;
        ShaftSet odd = default;
        ShaftSet even = default;
        for (int end = 0; end < threading.Length; end++)
        {
            if (end % 2 == 0) odd |= threading[end];
            else even |= threading[end];
        }

        ShaftSet oddOnly = odd.Without(even);
        ShaftSet evenOnly = even.Without(odd);
        for (int end = 0; end < threading.Length; end++)
        {
            if (!threading[end].Overlaps(end % 2 == 0 ? oddOnly : evenOnly)) return null;
        }

        return new TabbySheds(oddOnly, evenOnly);
    }

    /// <summary>Whether ends that weave alike all stand on odd places or all on even ones, so that a threading of the cloth can weave plain weave.</summary>
    /// <param name="ends">The ends of a cloth, sorted.</param>
    public static bool AvailableOn(LineClasses ends)
    {
        ArgumentNullException.ThrowIfNull(ends);
        for (int end = 0; end < ends.ClassOf.Length; end++)
        {
            if ((ends.First[ends.ClassOf[end]] ^ end) % 2 != 0) return false;
        }

        return ends.ClassOf.Length > 1;
    }
}
