using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Reeds;
using Clothwright.Core.Worksheets;

namespace Clothwright.Client.Scales;

/// <summary>The setts that the reeds at hand give, around the setts that serve the purpose.</summary>
internal static class ReedStops
{
    private const double Around = 0.15;

    // Sleys that weavers use without thinking: one, two or three ends in each dent, and two of these in turn.
    private static readonly ImmutableArray<Sley> Sleys =
        [Sley.Of(1, 0), Sley.Of(1), Sley.Of(1, 1, 2), Sley.Of(1, 2), Sley.Of(1, 2, 2), Sley.Of(2), Sley.Of(2, 3), Sley.Of(3), Sley.Of(4)];

    /// <summary>The stops, most open first.</summary>
    public static ImmutableArray<ReedStop> Of(Worksheet worksheet, PlanResult plan)
    {
        double low = plan.SettAdvice.EndsRange.Low.PerMetre * (1 - Around);
        double high = plan.SettAdvice.EndsRange.High.PerMetre * (1 + Around);
        IEnumerable<ReedStop> stops = plan.Loom.Kind == LoomKind.RigidHeddle
            ? worksheet.Heddles.Select(h => new ReedStop(h.Name, Sley.Of(1), h.Spaces))
            : worksheet.Reeds.SelectMany(r => Sleys.Select(s => new ReedStop(r.Name, s, s.In(r.Dents))));
        return [.. stops.Where(s => s.Sett.PerMetre >= low && s.Sett.PerMetre <= high).OrderBy(s => s.Sett.PerMetre)];
    }
}
