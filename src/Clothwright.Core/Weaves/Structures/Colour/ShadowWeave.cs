using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Shadow weave: dark and light threads by turns both ways, each light thread woven opposite its dark neighbour.</summary>
public static class ShadowWeave
{
    /// <summary>The light thread goes to the opposite shaft.</summary>
    public static Rule Rule { get; } = new(
        "shadow weave",
        "dark on k, light on the opposite shaft k + n/2: 1 3 2 4 3 1 4 2; half-and-half twill tie-up, treadled alike; plain with floats of 2 where the line turns",
        Source.Published("two hand-outs on drafting shadow weave"));

    /// <summary>One repeat.</summary>
    /// <param name="shafts">Shafts, an even number from 4 to 64.</param>
    /// <param name="neighbouringPairs">Shafts numbered so that dark and light lie side by side (1 2 3 4 2 1 4 3); the cloth is the same.</param>
    /// <exception cref="InputProblemException">The number of shafts is odd or out of range.</exception>
    public static Weave Of(int shafts = 4, bool neighbouringPairs = false)
    {
        if (shafts is < 4 or > ShaftSet.Highest || shafts % 2 != 0)
        {
            throw new InputProblemException(new InputProblem($"Shadow weave has no opposite shafts on {shafts}.", "shafts", "Give an even number from 4 to 64, for example 4."));
        }

        int half = shafts / 2;
        int[] threading = [.. Enumerable.Range(1, shafts).SelectMany(k => new[] { Number(k), Number(k + half) })];
        ShaftSet[] lifts = [.. Enumerable.Range(1, shafts).SelectMany(k => new[] { Half(k), Half(k + half) })];
        Weave weave = Weave.FromLifts($"shadow weave, {shafts} shafts", Rule, threading, lifts);
        return weave with
        {
            Draft = weave.Draft with { WarpOrder = ThreadOrder.Of(0, 1), WeftOrder = ThreadOrder.Of(0, 1) },
            YarnNames = ColourAndWeave.DarkAndLight,
            Notes = ["Dark and light by turns in warp and weft, starting dark.", "Sett as for plain weave."],
        };

        ShaftSet Half(int first) => ShaftSet.Of([.. Enumerable.Range(first, half).Select(Number)]);

        int Number(int shaft)
        {
            int k = DrawOrder.Wrap(shaft, shafts);
            if (!neighbouringPairs) return k;
            return k <= half ? 2 * k - 1 : 2 * (k - half);
        }
    }
}
