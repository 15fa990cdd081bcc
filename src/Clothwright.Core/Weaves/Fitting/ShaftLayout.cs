using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>Ends laid on shafts, and what each kind of pick moves.</summary>
/// <param name="Shafts">Shafts in use.</param>
/// <param name="Threading">Shafts of each end.</param>
/// <param name="Moved">For each kind of pick the shafts that move: rise, or sink with a sinking or counterbalanced shed.</param>
/// <param name="Sinking">Whether moved shafts sink.</param>
/// <param name="Proved">Whether fewer shafts are impossible.</param>
/// <param name="Notes">What a weaver should know about it.</param>
internal sealed record ShaftLayout(
    int Shafts,
    ImmutableArray<ShaftSet> Threading,
    ImmutableArray<ShaftSet> Moved,
    bool Sinking,
    bool Proved,
    ImmutableArray<string> Notes)
{
    /// <summary>The shafts that are up on a kind of pick.</summary>
    public ShaftSet Up(int pickKind) =>
        Sinking ? new ShaftSet(ShaftSet.FirstOf(Shafts).Bits & ~Moved[pickKind].Bits) : Moved[pickKind];
}
