namespace Clothwright.Core.Cloths.Geometry;

/// <summary>Peirce's geometry of one thread between two crossings: circular arcs round the other system, a straight piece between.</summary>
/// <remarks>
/// p = (l − Dθ) cos θ + D sin θ, h = (l − Dθ) sin θ + D (1 − cos θ), read in Balasubramanian's notes. Eliminating l gives the
/// closed form used here: p sin θ + (D − h) cos θ = D. Lengths in one unit, whichever it is; angles in radians.
/// </remarks>
public static class PeirceGeometry
{
    private const int Halvings = 100;

    /// <summary>The least crossing pitch at which a crimp height can be reached: there the thread has no straight piece left.</summary>
    /// <param name="sum">D, the thicknesses of both systems together.</param>
    /// <param name="height">Crimp height, 0 to D.</param>
    public static double ShortestPitch(double sum, double height) => Math.Sqrt(Math.Max(0, height * (2 * sum - height)));

    /// <summary>The greatest crimp height that a crossing pitch leaves room for.</summary>
    /// <param name="pitch">Crossing pitch, 0 or more.</param>
    /// <param name="sum">D.</param>
    public static double GreatestHeight(double pitch, double sum) => pitch >= sum ? sum : sum - Math.Sqrt(sum * sum - pitch * pitch);

    /// <summary>Weave angle θ.</summary>
    /// <param name="pitch">Crossing pitch, not below <see cref="ShortestPitch"/>.</param>
    /// <param name="sum">D.</param>
    /// <param name="height">Crimp height, 0 to D.</param>
    public static double AngleRadians(double pitch, double sum, double height)
    {
        double rest = sum - height;
        double reach = Math.Max(sum, Math.Sqrt(pitch * pitch + rest * rest));
        return Math.Asin(sum / reach) - Math.Atan2(rest, pitch);
    }

    /// <summary>Modular length l: yarn between two neighbouring crossings.</summary>
    /// <param name="pitch">Crossing pitch, not below <see cref="ShortestPitch"/>.</param>
    /// <param name="sum">D.</param>
    /// <param name="height">Crimp height, 0 to D.</param>
    public static double ModularLength(double pitch, double sum, double height)
    {
        double angle = AngleRadians(pitch, sum, height);
        double cosine = Math.Cos(angle);
        double straight = cosine < 1e-12 ? 0 : (pitch - sum * Math.Sin(angle)) / cosine;
        return sum * angle + Math.Max(0, straight);
    }

    /// <summary>Crimp of plain weave: l ÷ p − 1.</summary>
    /// <param name="pitch">Crossing pitch, above 0.</param>
    /// <param name="sum">D.</param>
    /// <param name="height">Crimp height, 0 to D.</param>
    public static double Crimp(double pitch, double sum, double height) => ModularLength(pitch, sum, height) / pitch - 1;

    /// <summary>Crimp by the customary approximation h = 4/3 p √c: near for usual cloths, low near the jam.</summary>
    /// <param name="pitch">Crossing pitch, above 0.</param>
    /// <param name="height">Crimp height.</param>
    public static double ApproximateCrimp(double pitch, double height) => Square(3 * height / (4 * pitch));

    /// <summary>Crimp height by the same approximation.</summary>
    /// <param name="pitch">Crossing pitch, above 0.</param>
    /// <param name="crimp">Crimp as a fraction.</param>
    public static double ApproximateHeight(double pitch, double crimp) => 4.0 / 3 * pitch * Math.Sqrt(crimp);

    /// <summary>Crimp interchange: the other system's state when this one is drawn out or let in at constant yarn lengths.</summary>
    /// <param name="sum">D.</param>
    /// <param name="own">Modular length of the system whose pitch is set.</param>
    /// <param name="other">Modular length of the other system.</param>
    /// <param name="pitch">The new crossing pitch along the own system.</param>
    /// <returns>Heights and the other pitch; null where the cloth cannot follow because one system is straight or jammed.</returns>
    public static CrimpExchange? Exchange(double sum, double own, double other, double pitch)
    {
        if (pitch > own || pitch < sum * Math.Sin(Math.Min(own / sum, Math.PI / 2))) return null;
        double angle = Root(0, Math.Min(own / sum, Math.PI / 2), a => Pitch(own, sum, a) <= pitch);
        double height = Height(own, sum, angle);
        double left = sum - height;
        double steepest = Math.Min(other / sum, Math.PI / 2);
        if (left < 0 || left > Height(other, sum, steepest)) return null;
        double otherAngle = Root(0, steepest, a => Height(other, sum, a) >= left);
        return new CrimpExchange(height, left, Pitch(other, sum, otherAngle));
    }

    /// <summary>Crossing pitch of a thread of known length and angle.</summary>
    internal static double Pitch(double length, double sum, double angle) => (length - sum * angle) * Math.Cos(angle) + sum * Math.Sin(angle);

    /// <summary>Crimp height of a thread of known length and angle.</summary>
    internal static double Height(double length, double sum, double angle) => (length - sum * angle) * Math.Sin(angle) + sum * (1 - Math.Cos(angle));

    // The least value in a range from which on a condition holds.
    internal static double Root(double low, double high, Func<double, bool> holds)
    {
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            if (holds(middle)) high = middle;
            else low = middle;
        }

        return (low + high) / 2;
    }

    private static double Square(double value) => value * value;
}
