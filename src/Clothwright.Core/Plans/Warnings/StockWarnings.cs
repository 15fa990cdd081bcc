using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans.Warnings;

/// <summary>Warns where the shelf does not suffice and of lots that differ.</summary>
internal static class StockWarnings
{
    public static IEnumerable<PlanWarning> Of(PlanRequest request, ImmutableArray<YarnNeed> yarns)
    {
        foreach (YarnNeed need in yarns)
        {
            string where = $"shelf[{request.Shelf.IndexOf(need.Yarn)}]";
            if (need.Packages.Missing > Mass.Zero && !need.Yarn.Packages.IsDefaultOrEmpty)
            {
                yield return new PlanWarning(
                    "yarn-short",
                    where,
                    $"{need.Yarn.Name}: {Text(need.Packages.Missing, request.Units)} more than is on the shelf are needed to be sure in 95 of 100 cases.",
                    "Buy more before winding, or weave a shorter piece; say how it is sold under \"offer\" to have packages and price reckoned.");
            }

            foreach (YarnAdvice advice in need.Packages.Warnings) yield return new PlanWarning("lots", where, $"{need.Yarn.Name}: {advice.Says}", advice.Advice);
        }
    }

    private static string Text(Mass mass, UnitStyle units) => QuantityText.Format(QuantityKind.Mass, mass.BaseValue, units);
}
