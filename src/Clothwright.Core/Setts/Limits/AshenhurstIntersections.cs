using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts.Limits;

/// <summary>Ashenhurst, ends plus intersections: in one repeat each end takes its own diameter, each intersection that of the other system.</summary>
/// <remarks>The handweaver's maximum. One yarn: n = threads touching × E ÷ (E + I).</remarks>
public static class AshenhurstIntersections
{
    /// <summary>Name of the method.</summary>
    public const string Method = "Ashenhurst, ends plus intersections";

    private static readonly Source Origin = Source.Published("Ashenhurst's rule as set out for handweavers, study-group page, 1999; unlike yarns from memory of Robinson & Marks");

    /// <summary>Distance between the threads of one system, in the unit of the diameters.</summary>
    /// <param name="own">Diameter of the threads that lie side by side.</param>
    /// <param name="other">Diameter of the threads that pass between them.</param>
    /// <param name="meanFloat">Threads for each passage, 1 or more.</param>
    public static double Spacing(double own, double other, double meanFloat) => own + other / meanFloat;

    /// <summary>Closest threads of one system.</summary>
    /// <param name="label">What they are, for example <c>closest ends</c>.</param>
    /// <param name="own">Diameter of the threads that lie side by side.</param>
    /// <param name="other">Diameter of the threads that pass between them.</param>
    /// <param name="meanFloat">Threads for each passage, 1 or more.</param>
    public static Derived<Sett> Threads(string label, Derived<Length> own, Derived<Length> other, double meanFloat) => Derived.From<Sett>(
        label,
        new Rule(Method, $"1 ÷ (own diameter + other diameter ÷ {meanFloat.ToString("0.###", CultureInfo.InvariantCulture)}), the mean float", Origin),
        own,
        other,
        (a, b) => 1 / Spacing(a, b, meanFloat));
}
