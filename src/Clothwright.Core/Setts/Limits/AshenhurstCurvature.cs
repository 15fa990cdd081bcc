using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts.Limits;

/// <summary>Ashenhurst's curvature theory: as threads bend they pass at 60 degrees, so an intersection takes 0.732 of a diameter.</summary>
/// <remarks>One yarn: n = threads touching × E ÷ (E + 0.732 I). It is Peirce's jam of a square cloth, with floats touching.</remarks>
public static class AshenhurstCurvature
{
    /// <summary>Name of the method.</summary>
    public const string Method = "Ashenhurst, curvature";

    private static readonly Source Origin = Source.FromMemoryOf("Robinson & Marks, Woven Cloth Construction");

    /// <summary>Distance between the threads of one system, in the unit of the diameters.</summary>
    /// <param name="own">Diameter of the threads that lie side by side.</param>
    /// <param name="other">Diameter of the threads that pass between them.</param>
    /// <param name="meanFloat">Threads for each passage, 1 or more.</param>
    public static double Spacing(double own, double other, double meanFloat) =>
        (Math.Sqrt(3) / 2 * (own + other) + (meanFloat - 1) * own) / meanFloat;

    /// <summary>Closest threads of one system.</summary>
    /// <param name="label">What they are, for example <c>closest ends</c>.</param>
    /// <param name="own">Diameter of the threads that lie side by side.</param>
    /// <param name="other">Diameter of the threads that pass between them.</param>
    /// <param name="meanFloat">Threads for each passage, 1 or more.</param>
    public static Derived<Sett> Threads(string label, Derived<Length> own, Derived<Length> other, double meanFloat)
    {
        string m = meanFloat.ToString("0.###", CultureInfo.InvariantCulture);
        return Derived.From<Sett>(
            label,
            new Rule(Method, $"{m} ÷ (0.866 (own + other diameter) + ({m} − 1) own diameter), {m} the mean float", Origin),
            own,
            other,
            (a, b) => 1 / Spacing(a, b, meanFloat));
    }
}
