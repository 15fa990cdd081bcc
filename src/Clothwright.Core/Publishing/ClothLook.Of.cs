using System.Collections.Immutable;
using Clothwright.Core.Cloths;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Publishing.Composing;
using Clothwright.Core.Setts;

namespace Clothwright.Core.Publishing;

public sealed partial record ClothLook
{
    /// <summary>The look of one washed piece of a plan; of cloth in several layers, one layer.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="piece">One of its pieces.</param>
    public static ClothLook Of(PlanResult plan, PiecePlan piece)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(piece);
        return ClothLooks.Of(plan, piece);
    }

    /// <summary>The look of a cloth of which yarns, weave and setts are known; washed, so that its yarns lie as wide as they will.</summary>
    /// <param name="cloth">The cloth.</param>
    public static ClothLook Of(ClothGeometry cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ClothQuestion known = cloth.Question;
        return new ClothLook(known.Weave, Threads(known.Warp), Threads(known.Weft), known.Ends.Value, known.Picks.Value);
    }

    private static ImmutableArray<ThreadLook> Threads(ThreadSystem threads) =>
        [.. threads.Order.Repeat.Select(y => ClothLooks.Thread(threads.Yarns[y], 1))];
}
