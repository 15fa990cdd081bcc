namespace Clothwright.Core.Setts.Limits;

/// <summary>Peirce's jam: no straight yarn is left between the crossings of either system.</summary>
/// <remarks>
/// √(1 − (t1/D)²) + √(1 − (t2/D)²) = 1 with D = d1 + d2 and t the crossing pitch; in floats threads touch, so
/// t = M p − (M − 1) d. Equations read in Balasubramanian's notes, the locus from memory of Peirce 1937, floats after Love 1954.
/// All lengths in one unit, whichever it is.
/// </remarks>
public static class PeirceJam
{
    /// <summary>Name of the method.</summary>
    public const string Method = "Peirce, jam with touching floats";

    private const int Halvings = 60;

    /// <summary>Crossing pitch that is left of a spacing once the threads of a float touch.</summary>
    /// <param name="spacing">Distance between neighbouring threads.</param>
    /// <param name="diameter">Diameter of these threads.</param>
    /// <param name="meanFloat">Threads for each passage of the other system, 1 or more.</param>
    public static double CrossingPitch(double spacing, double diameter, double meanFloat) =>
        meanFloat * spacing - (meanFloat - 1) * diameter;

    /// <summary>Spacing that gives a crossing pitch when the threads of a float touch.</summary>
    /// <param name="pitch">Crossing pitch.</param>
    /// <param name="diameter">Diameter of these threads.</param>
    /// <param name="meanFloat">Threads for each passage of the other system, 1 or more.</param>
    public static double Spacing(double pitch, double diameter, double meanFloat) =>
        (pitch + (meanFloat - 1) * diameter) / meanFloat;

    /// <summary>The closest spacing of one system beside a given spacing of the other.</summary>
    /// <param name="spacing">Spacing of the given system.</param>
    /// <param name="own">Diameter of the given system.</param>
    /// <param name="ownFloat">Mean float that governs the given system.</param>
    /// <param name="other">Diameter of the sought system.</param>
    /// <param name="otherFloat">Mean float that governs the sought system.</param>
    /// <returns>The spacing; the other diameter where the locus sets no limit and its threads may pack until they touch.</returns>
    public static double OtherSpacing(double spacing, double own, double ownFloat, double other, double otherFloat)
    {
        double sum = own + other;
        double term = Term(CrossingPitch(spacing, own, ownFloat), sum);
        double pitch = sum * Math.Sqrt(Math.Max(0, 1 - (1 - term) * (1 - term)));
        return Math.Max(other, Spacing(pitch, other, otherFloat));
    }

    /// <summary>Spacing of the ends when ends and picks are drawn together in a fixed proportion until they jam.</summary>
    /// <param name="warp">Warp diameter.</param>
    /// <param name="weft">Weft diameter.</param>
    /// <param name="endFloat">M1, which governs the ends; 1 or more.</param>
    /// <param name="pickFloat">M2, which governs the picks; 1 or more.</param>
    /// <param name="picksPerEnd">Picks per end: pick spacing = end spacing ÷ this; above 0.</param>
    /// <returns>The closest spacing of the ends in that proportion; no thread of a system overlaps its neighbour.</returns>
    public static double EndSpacing(double warp, double weft, double endFloat, double pickFloat, double picksPerEnd)
    {
        double sum = warp + weft;
        double open = 4 * sum * Math.Max(1, picksPerEnd);
        double jammed = 0;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (open + jammed) / 2;
            if (Fits(middle)) open = middle;
            else jammed = middle;
        }

        return open;

        bool Fits(double end)
        {
            double pick = end / picksPerEnd;
            return end >= warp && pick >= weft
                && Term(CrossingPitch(end, warp, endFloat), sum) + Term(CrossingPitch(pick, weft, pickFloat), sum) <= 1;
        }
    }

    /// <summary>How tight a cloth is: the factor by which both spacings can shrink together before it jams; 1 is jammed.</summary>
    /// <param name="warp">Warp diameter.</param>
    /// <param name="weft">Weft diameter.</param>
    /// <param name="endFloat">M1.</param>
    /// <param name="pickFloat">M2.</param>
    /// <param name="endSpacing">Spacing of the ends.</param>
    /// <param name="pickSpacing">Spacing of the picks.</param>
    /// <returns>Above 1 for a cloth closer than these yarns can lie.</returns>
    public static double Tightness(double warp, double weft, double endFloat, double pickFloat, double endSpacing, double pickSpacing) =>
        EndSpacing(warp, weft, endFloat, pickFloat, endSpacing / pickSpacing) / endSpacing;

    // √(1 − (t/D)²), which falls from 1 to 0 as the pitch opens; past D the system sets no limit.
    private static double Term(double pitch, double sum) => pitch <= 0
        ? 1 - pitch / sum
        : pitch >= sum ? 0 : Math.Sqrt(1 - pitch / sum * (pitch / sum));
}
