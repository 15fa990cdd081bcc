using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts.Limits;

/// <summary>Law's rule: Ashenhurst's ends plus intersections, with an allowance for long floats. Recalled with low confidence.</summary>
public static class LawRule
{
    /// <summary>Name of the method; it says that the figure is not to be leaned on.</summary>
    public const string Method = "Law, low confidence";

    private static readonly Source Origin = Source.FromMemoryOf("Robinson & Marks, Woven Cloth Construction, low confidence");

    /// <summary>Factor on Ashenhurst's figure: 5 % for each unit of float above 2 in twills, 5.5 % in satins, 9.5 % above 1 in hopsacks.</summary>
    /// <param name="family">The family.</param>
    /// <param name="meanFloat">Mean float.</param>
    public static double Allowance(WeaveFamily family, double meanFloat) => family switch
    {
        WeaveFamily.Twill => 1 + 0.05 * Math.Max(0, meanFloat - 2),
        WeaveFamily.Satin => 1 + 0.055 * Math.Max(0, meanFloat - 2),
        WeaveFamily.Hopsack => 1 + 0.095 * Math.Max(0, meanFloat - 1),
        _ => 1,
    };

    /// <summary>Closest threads of one system.</summary>
    /// <param name="ashenhurst">Ashenhurst's figure, ends plus intersections.</param>
    /// <param name="family">The family.</param>
    /// <param name="meanFloat">Mean float.</param>
    public static Derived<Sett> Threads(Derived<Sett> ashenhurst, WeaveFamily family, double meanFloat)
    {
        double factor = Allowance(family, meanFloat);
        return Derived.From<Sett>(
            ashenhurst.Working.Label,
            new Rule(Method, $"Ashenhurst × {factor.ToString("0.###", CultureInfo.InvariantCulture)}", Origin),
            ashenhurst,
            n => n * factor);
    }
}
