using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans.Warnings;

/// <summary>Warns of yarns that make a difficult warp.</summary>
internal static class WarpYarnWarnings
{
    public static IEnumerable<PlanWarning> Of(PlanRequest request)
    {
        string[] used = [.. request.Warp.Runs.Select(r => r.YarnId).Distinct(StringComparer.Ordinal)];
        foreach (string id in used)
        {
            Yarn yarn = request.Shelf.First(y => y.Id == id);
            bool held = used.Length > 1 && request.Warp.Runs.Where(r => r.YarnId == id).All(r => r.Threads == 1);
            foreach (YarnAdvice advice in ConstructionNotes.AsWarp(yarn, held).Where(a => a.IsWarning))
            {
                yield return new PlanWarning(IdOf(yarn.Construction), "warp.order", $"{yarn.Name}: {advice.Says}", advice.Advice);
            }
        }
    }

    private static string IdOf(YarnConstruction construction) => construction switch
    {
        YarnConstruction.Chenille => "chenille-warp",
        YarnConstruction.Monofilament => "monofilament-warp",
        _ => "delicate-warp",
    };
}
