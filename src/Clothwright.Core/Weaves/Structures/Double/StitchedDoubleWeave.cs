using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Double weave whose layers are caught together here and there, for a thick single cloth.</summary>
public static class StitchedDoubleWeave
{
    /// <summary>Now and then an end of the lower layer is lifted over a pick of the upper.</summary>
    public static Rule Rule { get; } = new(
        "stitched double weave", "two layers; on one top pick of each stitch repeat one end of the bottom layer is lifted too", Source.Derivation);

    /// <summary>One repeat.</summary>
    /// <param name="every">Units of four ends and four picks from one stitch to the next, 1 to 16.</param>
    /// <exception cref="InputProblemException">The number is out of range.</exception>
    public static Weave Of(int every = 1)
    {
        if (every is < 1 or > 16) throw new InputProblemException(new InputProblem($"A stitch every {every} units cannot be made.", "every", "Give 1 to 16."));
        // The stitching end has a shaft of its own unless every unit is stitched.
        int stitch = every == 1 ? 2 : 5;
        int[] threading = [.. Enumerable.Range(0, 4 * every).Select(i => i == 1 ? stitch : i % 4 + 1)];
        ShaftSet[] lifts = [.. Enumerable.Range(0, 4 * every).Select(p => Lift(p, stitch))];
        Weave weave = Weave.FromLifts("stitched double weave", Rule, threading, lifts);
        return weave with
        {
            Draft = weave.Draft with { WarpOrder = ThreadOrder.Of(0, 1), WeftOrder = ThreadOrder.Of(0, 1) },
            YarnNames = ["top", "bottom"],
            Notes = ["The stitch shows as a dot of the lower warp on the face; put it where the colours agree."],
        };
    }

    private static ShaftSet Lift(int pick, int stitch)
    {
        ShaftSet lift = LayeredWeave.Lift(2, pick % 2 + 1, pick % 4 >= 2);
        // The stitching end weaves as the first bottom end: up on bottom picks of the first shed, and on the first top pick.
        return pick == 0 || lift.Contains(2) ? lift | ShaftSet.Of(stitch) : lift;
    }
}
