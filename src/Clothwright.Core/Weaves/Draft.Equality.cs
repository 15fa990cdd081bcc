using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Clothwright.Core.Weaves;

public sealed partial record Draft
{
    /// <summary>Same shafts, threading, tie-up, treadling, lift plan, shed, yarn orders and name.</summary>
    /// <param name="other">Another draft.</param>
    public bool Equals(Draft? other) => other is not null
        && Shafts == other.Shafts
        && RisingShed == other.RisingShed
        && string.Equals(Name, other.Name, StringComparison.Ordinal)
        && Same(Threading, other.Threading)
        && Same(TieUp, other.TieUp)
        && Same(Treadling, other.Treadling)
        && Same(LiftPlan, other.LiftPlan)
        && WarpOrder.Equals(other.WarpOrder)
        && WeftOrder.Equals(other.WeftOrder);

    /// <inheritdoc />
    public override int GetHashCode()
    {
        var hash = new HashCode();
        hash.Add(Shafts);
        hash.Add(RisingShed);
        foreach (ShaftSet end in Threading) hash.Add(end);
        foreach (ShaftSet treadle in TieUp) hash.Add(treadle);
        foreach (ShaftSet pick in Treadling) hash.Add(pick);
        foreach (ShaftSet pick in LiftPlan) hash.Add(pick);
        return hash.ToHashCode();
    }

    // Word by word: a draft of thousands of threads is compared at every stroke.
    private static bool Same(ImmutableArray<ShaftSet> one, ImmutableArray<ShaftSet> other) =>
        one == other || MemoryMarshal.Cast<ShaftSet, ulong>(one.AsSpan()).SequenceEqual(MemoryMarshal.Cast<ShaftSet, ulong>(other.AsSpan()));
}
