using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans.Cautions;

/// <summary>The exemptions from testing of the United States standard for the flammability of clothing textiles.</summary>
public static class FlammabilityRule
{
    // Acrylic, modacrylic, nylon, olefin, polyester, wool. Hair of other animals is not named there and is not counted as wool here.
    private static readonly HashSet<string> ListedFibres = new(StringComparer.Ordinal)
    {
        "acrylic", "nylon", "polyester", "wool-woollen", "wool-worsted", "merino", "superwash-wool",
    };

    /// <summary>Mass from which a plain surface needs no test: 2.6 oz per square yard.</summary>
    public static ArealDensity ExemptMass { get; } = ArealDensity.FromGramsPerSquareMetre(2.6 * ArealDensity.GramsPerSquareMetrePerOuncePerSquareYard);

    /// <summary>Where the rule comes from.</summary>
    public static Source Source { get; } = Source.Published("16 CFR 1610.1(d), as quoted");

    /// <summary>What the rule says of a cloth.</summary>
    /// <param name="yarns">Its yarns; at least one.</param>
    /// <param name="raised">Whether its surface is raised: brushed, cut pile or chenille.</param>
    /// <param name="mass">Its mass per area.</param>
    /// <remarks>The list of fibres exempts only cloth that is entirely of them; no mass exempts a raised surface.</remarks>
    public static FlammabilityFinding Of(IEnumerable<Yarn> yarns, bool raised, ArealDensity mass)
    {
        ArgumentNullException.ThrowIfNull(yarns);
        Yarn[] all = [.. yarns];
        if (all.All(y => y.Fibres.Shares.All(s => ListedFibres.Contains(s.Fibre.Id)))) return FlammabilityFinding.ExemptByFibre;
        bool pile = raised || all.Any(y => y.Construction == YarnConstruction.Chenille);
        return !pile && mass >= ExemptMass ? FlammabilityFinding.ExemptByMass : FlammabilityFinding.ToBeTested;
    }
}
