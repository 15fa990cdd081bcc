using Clothwright.Core.Weaves;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Editing;

/// <summary>Drafts by chance.</summary>
internal static class DraftGen
{
    public const int Shafts = 6;
    public const int Treadles = 5;

    /// <summary>Drafts with tie-up and treadling, ends on one or two shafts or none, yarn orders of their own.</summary>
    public static Gen<Draft> Treadled { get; } =
        Gen.Select(Sets(Shafts).Array[1, 14], Sets(Shafts).Array[Treadles], Sets(Treadles).Array[1, 14], Gen.Int[0, 2].Array[1, 6], Gen.Bool).Select(
            (threading, tieUp, treadling, yarns, rising) => new Draft
            {
                Shafts = Shafts,
                Threading = [.. threading],
                TieUp = [.. tieUp],
                Treadling = [.. treadling],
                WarpOrder = ThreadOrder.Of(yarns),
                WeftOrder = ThreadOrder.Of(yarns),
                RisingShed = rising,
            });

    private static Gen<ShaftSet> Sets(int members) => Gen.ULong[0, (1UL << members) - 1].Select(bits => new ShaftSet(bits));
}
