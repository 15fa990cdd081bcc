using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Analysis.Layers;

namespace Clothwright.Core.Weaves.Analysis;

/// <summary>Puts into words what is wrong with a cloth.</summary>
internal static class ClothFaults
{
    private const int MostNamed = 12;

    public static ImmutableArray<InputProblem> Of(ClothAnalysis cloth)
    {
        var problems = ImmutableArray.CreateBuilder<InputProblem>();
        Loose(cloth.Layers.LooseEnds, "end", "warp ends", "picks", problems);
        Loose(cloth.Layers.LoosePicks, "pick", "picks", "ends", problems);
        Layers(cloth, problems);
        ImmutableArray<int> left = PullingOut(cloth.SelvedgeFromLeft);
        if (!left.IsEmpty)
        {
            problems.Add(new InputProblem(
                $"After {Named(left, "pick")} the next pick goes into the same shed and both pull out at the edge.",
                "treadling",
                "Catch an edge end by hand or with a floating selvedge at these turns, or throw them with two shuttles."));
        }

        return problems.ToImmutable();
    }

    private static ImmutableArray<int> PullingOut(Edges.SelvedgeReport report) =>
        [.. report.Missed.Where(m => m.PullsOut).Select(m => m.Turn.Pick % report.Picks).Distinct().Order()];

    private static void Loose(
        ImmutableArray<int> threads, string thread, string threadsName, string crossed, ImmutableArray<InputProblem>.Builder problems)
    {
        if (threads.IsEmpty) return;
        ImmutableArray<int> sorted = [.. threads.Order()];
        problems.Add(new InputProblem(
            $"Nothing holds {Named(sorted, thread)}: the thread can be lifted off the cloth.",
            $"drawdown, {thread} {sorted[0] + 1}",
            $"Let these {threadsName} pass both over and under {crossed} of the same cloth."));
    }

    /// <summary>What the layers are to each other.</summary>
    public static string Form(ClothAnalysis cloth) => cloth.Joins.Form switch
    {
        LayerForm.SeparateCloths => "nothing joins them",
        LayerForm.DoubleWidth => "joined at one side by the shuttle, as a cloth of double width",
        LayerForm.Tube => "joined at both sides by the shuttle, as a tube",
        LayerForm.ManyFold => $"joined at alternate sides by the shuttle, as a cloth of {cloth.Layers.Layers.Length} widths",
        LayerForm.Spiral => "joined in a spiral by the shuttle",
        _ => "joined here and there by the shuttle",
    };

    private static void Layers(ClothAnalysis cloth, ImmutableArray<InputProblem>.Builder problems)
    {
        int layers = cloth.Layers.Layers.Length;
        int meant = cloth.LayersMeant;
        if (layers == meant || (layers < 2 && meant == 1)) return;
        if (layers < 2)
        {
            problems.Add(new InputProblem(
                $"{meant} layers are meant, and the cloth weaves as one.",
                "drawdown",
                "Lift every end of the upper layers on the picks of the lower ones; if one cloth is meant, say so."));
            return;
        }

        problems.Add(new InputProblem(
            $"The cloth weaves as {layers} layers that lie on each other: {Form(cloth)}{(meant > 1 ? $"; {meant} are meant" : "")}.",
            "drawdown",
            $"If {layers} layers are meant, say so; if not, lift an end of the lower layer on a pick of the upper one here and there to stitch them."));
    }

    private static string Named(ImmutableArray<int> threads, string thread)
    {
        string numbers = string.Join(' ', threads.Take(MostNamed).Select(t => t + 1));
        string more = threads.Length > MostNamed ? $" and {threads.Length - MostNamed} more" : "";
        return $"{thread}{(threads.Length == 1 ? "" : "s")} {numbers}{more}";
    }
}
