namespace Clothwright.Core.Weaves.Faults;

/// <summary>The whole cloth is seen: each crossing must be as it is.</summary>
internal sealed class ObservedCloth(Drawdown seen) : ClothToExplain(seen.Ends, seen.Picks)
{
    public override ulong Wrong(int pick, int word, ulong woven) => seen.Row(pick)[word] ^ woven;

    public override ulong Extra(int pick, int word, ulong woven) => 0;
}
