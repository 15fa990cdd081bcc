using System.Collections.Immutable;
using Clothwright.Core.Plans.Pieces;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Setts;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans.Warnings;

/// <summary>Warns of yarns side by side that shrink unlike each other, so that the cloth puckers.</summary>
internal static class ShrinkageWarnings
{
    // Seersucker is made with a difference of about this size; below it the cloth stays flat.
    private const double Puckers = 0.04;

    public static IEnumerable<PlanWarning> Of(ThreadSystem warp, ImmutableArray<PieceCloth> cloths)
    {
        if (Unlike(warp, "warp.order", "length") is { } along) yield return along;
        for (int i = 0; i < cloths.Length; i++)
        {
            if (Unlike(cloths[i].Ground.Threads, $"pieces[{i}].weft", "width") is { } across) yield return across;
        }
    }

    private static PlanWarning? Unlike(ThreadSystem threads, string where, string direction)
    {
        Yarn[] used = [.. threads.Order.Repeat.Distinct().Select(i => threads.Yarns[i])];
        Yarn most = used.MaxBy(y => y.Fibres.WashingShrinkage.Value.Value)!;
        Yarn least = used.MinBy(y => y.Fibres.WashingShrinkage.Value.Value)!;
        if (most.Fibres.WashingShrinkage.Value.Value - least.Fibres.WashingShrinkage.Value.Value < Puckers) return null;
        return new PlanWarning(
            "unlike-shrinkage",
            where,
            $"{most.Name} shrinks about {most.Fibres.WashingShrinkage.Value} in {direction}, {least.Name} about {least.Fibres.WashingShrinkage.Value}: side by side they pucker in the first washing.",
            "Wash a sample; if puckers are not wanted, use yarns that shrink alike.");
    }
}
