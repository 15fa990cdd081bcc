using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Publishing.Blocks;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>The length of the warp and what each part of it becomes.</summary>
internal static class StripText
{
    /// <summary>The parts from the front.</summary>
    public static WarpStripBlock Of(PlanResult plan) => new(
        [.. plan.Sections.Select(s => new WarpPart(s.Label, Use(s.Kind), s.Warp.Value))]);

    private static WarpPartUse Use(WarpSectionKind kind) => kind switch
    {
        WarpSectionKind.Cloth => WarpPartUse.Piece,
        WarpSectionKind.Sample => WarpPartUse.Sample,
        WarpSectionKind.Header => WarpPartUse.Header,
        WarpSectionKind.LoomWaste => WarpPartUse.LoomWaste,
        _ => WarpPartUse.Fringe,
    };
}
