using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Cloths.Hand;

/// <summary>Lower bound of a cloth's bending length, from fibres that bend freely. It ranks cloths; friction at the crossings raises it.</summary>
public static class BendingBound
{
    private static readonly Rule Bound = new(
        "bending length, lower bound",
        "∛(rigidity ÷ weight), rigidity = threads per width × fibres in a thread × rigidity of a fibre ÷ (1 + crimp), geometric mean of both ways; to rank cloths only",
        Source.FromMemoryOf("Livesey & Owen 1964 and Morton & Hearle"));

    /// <summary>The bound, or null where a fibre's stiffness is unknown.</summary>
    /// <param name="cloth">The cloth.</param>
    public static Derived<Length>? Of(ClothGeometry cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        if (PerTex(cloth.Question.Warp) is not { } warp || PerTex(cloth.Question.Weft) is not { } weft) return null;
        return Derived.From<Length>(
            "bending length, at least",
            Bound,
            [
                cloth.Question.Ends, cloth.Question.Warp.MeanLinearDensity(), cloth.WarpCrimp,
                cloth.Question.Picks, cloth.Question.Weft.MeanLinearDensity(), cloth.WeftCrimp,
                cloth.Mass,
            ],
            v =>
            {
                // N·mm² per mm of width is N·mm = 1000 µN·m.
                double warpWay = v[0] / 1000 * v[1] * warp / (1 + v[2]) * 1000;
                double weftWay = v[3] / 1000 * v[4] * weft / (1 + v[5]) * 1000;
                return BendingTest.BendingLengthMillimetres(v[6], Math.Sqrt(warpWay * weftWay)) / 1000;
            });
    }

    // Bending rigidity of the fibres of a thread, per tex of thread, in N·mm² per tex.
    private static double? PerTex(ThreadSystem threads)
    {
        double sum = 0;
        foreach (int used in threads.Order.Repeat)
        {
            foreach (FibreShare share in threads.Yarns[used].Fibres.Shares)
            {
                if (FibreStiffness.Of(share.Fibre) is not { } fibre) return null;
                double one = BendingTest.FibreRigidityNewtonSquareMillimetre(
                    fibre.Tex, share.Fibre.Density.Value.GramsPerCubicCentimetre, fibre.ModulusNewtonPerTex, fibre.ShapeFactor);
                sum += share.MassShare.Value * one / fibre.Tex;
            }
        }

        return sum / threads.Order.Repeat.Length;
    }
}
