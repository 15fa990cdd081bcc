using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Publishing.Blocks;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>Loom, reed, heddles and shuttles a plan takes.</summary>
internal static class ToolsText
{
    /// <summary>A table of tools.</summary>
    public static TableBlock Of(PlanResult plan, FullThreading threading)
    {
        var rows = ImmutableArray.CreateBuilder<TableRow>();
        rows.Add(new TableRow(["Loom", $"{Words.Sentence(plan.Loom.Name)}; {Kind(plan)} in use; the warp stands {Words.Both(plan.ReedWidth)} wide"]));
        rows.Add(new TableRow([plan.Reed is { Heddles: > 0 } ? "Rigid heddles" : "Reed", SleyWords.Tool(plan)]));
        if (plan.Loom.Kind != LoomKind.RigidHeddle)
        {
            rows.Add(new TableRow(["Heddles", Words.List(Enumerable.Range(1, plan.LoomDraft.Shafts).Select(s => $"{Words.Count(threading.OnShaft(s))} on shaft {Words.Count(s)}"))]));
        }

        int wefts = plan.Pieces.SelectMany(p => p.Weft).Select(w => w.YarnId).Distinct(StringComparer.Ordinal).Count();
        rows.Add(new TableRow(["Shuttles", wefts == 1 ? "One, and waste yarn for the header" : $"{Words.Sentence(Words.Spelled(wefts))}, one for each weft, and waste yarn for the header"]));
        rows.Add(new TableRow(["Also", "Tape measure, scale, and paper for the measures"]));
        return new TableBlock([new TableColumn("Tool"), new TableColumn("What is needed")], rows.ToImmutable());
    }

    /// <summary>Rigid heddles in use: for the sett or for the weave, whichever asks for more, as far as the loom takes them.</summary>
    public static int HeddleCount(PlanResult plan) =>
        Math.Max(Math.Max(1, plan.Reed?.Heddles ?? 1), Math.Min(plan.LoomDraft.Shafts - 1, plan.Loom.RigidHeddles));

    private static string Kind(PlanResult plan)
    {
        if (plan.Loom.Kind == LoomKind.RigidHeddle) return Words.Of(HeddleCount(plan), "heddle");
        string shafts = Words.Of(plan.LoomDraft.Shafts, "shaft");
        return DraftText.IsTreadled(plan) ? $"{shafts} and {Words.Of(plan.LoomDraft.Treadles, "treadle")}" : shafts;
    }
}
