using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Honeycomb (waffle): floats of warp and weft round small plain hollows; the cloth draws in strongly and stands up in cells.</summary>
public static class Honeycomb
{
    /// <summary>Pointed both ways; long floats of each thread on the ridges.</summary>
    public static Rule Rule { get; } = new(
        "honeycomb",
        "pointed both ways on 2h threads; with levels a, b = 0 … h from one point the warp is up where a + b = h or a + b ≤ h − 2; longest warp float on the face 2h − 3, weft 2h − 1",
        Source.Published("Encyclopædia Britannica 1911, Honeycomb (floats of five and seven on eight)"));

    /// <summary>One repeat.</summary>
    /// <param name="shafts">Shafts, 4 to 32: one more than half the threads of a cell.</param>
    /// <exception cref="InputProblemException">The number of shafts is out of range.</exception>
    public static Weave Of(int shafts = 5)
    {
        if (shafts is < 4 or > 32)
        {
            throw new InputProblemException(new InputProblem($"Honeycomb is not woven on {shafts} shafts.", "shafts", "Give 4 to 32 shafts, for example 5."));
        }

        int h = shafts - 1;
        int[] order = DrawOrder.Pointed(shafts, shafts);
        ShaftSet[] tieUp =
        [
            .. Enumerable.Range(0, shafts).Select(b => ShaftSet.Of([.. Enumerable.Range(0, shafts).Where(a => a + b == h || a + b <= h - 2).Select(a => a + 1)])),
        ];
        return Weave.FromTreadles($"honeycomb, {shafts} shafts", Rule, order, tieUp, order) with
        {
            BalancingEnds = 1,
            BalancingPicks = 1,
            Notes =
            [
                $"Floats of {2 * h - 3} (warp) and {2 * h - 1} (weft) on the face, the reverse on the back.",
                "Draws in far more than a flat weave: weave and wash a swatch before the sett is fixed.",
            ],
        };
    }
}
