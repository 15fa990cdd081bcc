using System.Collections.Immutable;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Publishing.Blocks;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>Every figure of a plan with its working, by what it is about.</summary>
internal static class WorkingsText
{
    private const string Whole = "The whole warp";

    /// <summary>The appendix.</summary>
    public static HandoutSection Of(PlanResult plan) => new(
        "Workings",
        [
            new ParagraphBlock("How every figure came to be. What went into a figure is named by its number; a range after a figure is where it lies nine times in ten. R with a number is a rule that makes several figures: it is written out once, at the end. A rule without a source follows from its formula."),
            new WorkingsBlock([.. plan.Figures.All.GroupBy(f => Heading(plan, f.Name), StringComparer.Ordinal).Select(g => new WorkingsGroup(g.Key, [.. g.Select(f => f.Value.Working)]))]),
        ]);

    // Figures are named pieces[0].picks, yarns[tide].grams, sections[2].warp, hours[beaming], warpLength.
    private static string Heading(PlanResult plan, string name)
    {
        int opened = name.IndexOf('[', StringComparison.Ordinal);
        int closed = name.IndexOf("].", StringComparison.Ordinal);
        if (opened < 0) return Whole;
        string key = closed > opened ? name[(opened + 1)..closed] : "";
        return name[..opened] switch
        {
            "pieces" => Words.Sentence(plan.Pieces.FirstOrDefault(p => Words.Count(p.Index) == key)?.Piece.Name ?? Whole),
            "yarns" => plan.Yarns.FirstOrDefault(y => y.Yarn.Id == key)?.Yarn.Name ?? Whole,
            "sections" => "The warp, front to back",
            "hours" => "Time at work",
            _ => Whole,
        };
    }
}
