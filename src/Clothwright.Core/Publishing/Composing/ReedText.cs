using System.Collections.Immutable;
using Clothwright.Core.Plans;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Setts.Reeds;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>The sett on its scale, and how the reed is sleyed.</summary>
internal static class ReedText
{
    /// <summary>The scale and, for a reed or one rigid heddle, the dents one after another.</summary>
    public static ImmutableArray<HandoutBlock> Of(PlanResult plan)
    {
        var blocks = ImmutableArray.CreateBuilder<HandoutBlock>();
        SettAdvice advice = plan.SettAdvice;
        int layers = advice.Question.Layers;
        string layer = layers == 1 ? "" : $" All setts are of one layer; on the loom there are {Words.Spelled(layers)}.";
        blocks.Add(new ParagraphBlock($"Woven at {Words.Both(Layer(plan.Sett.Value, layers))}; advised for this yarn and weave {Words.Both(advice.Ends)}.{layer}"));
        blocks.Add(Scale(plan, layers));
        if (plan.Reed is { Heddles: 0 } fit) blocks.AddRange(Sley(plan, fit));
        return blocks.ToImmutable();
    }

    private static SettScaleBlock Scale(PlanResult plan, int layers)
    {
        SettAdvice advice = plan.SettAdvice;
        IEnumerable<ReedFit> others = advice.Reeds.Where(r => r.Name != plan.Reed?.Name).OrderBy(r => r.Sett.PerMetre);
        ImmutableArray<SettStop> stops =
        [
            .. plan.Reed is { } own ? [Stop(own, layers) with { IsChosen = true }] : Array.Empty<SettStop>(),
            .. others.Select(r => Stop(r, layers)),
        ];
        return new SettScaleBlock(
            ClothPurposeText.Word(advice.Question.Purpose),
            advice.EndsRange.Low,
            advice.EndsRange.High,
            advice.Ends.Value,
            Layer(plan.Sett.Value, layers),
            stops,
            [.. advice.Limits.Select(l => new SettStop(l.Method, l.Ends.Value))]);
    }

    private static SettStop Stop(ReedFit fit, int layers) =>
        new(fit.Heddles == 0 || !fit.Sley.IsEven ? $"{fit.Name}, {fit.Sley} a dent" : fit.Name, Layer(fit.Sett, layers)) { MarksLikely = fit.MarksLikely };

    private static Sett Layer(Sett onLoom, int layers) => Sett.FromPerMetre(onLoom.PerMetre / layers);

    private static IEnumerable<HandoutBlock> Sley(PlanResult plan, ReedFit fit)
    {
        ImmutableArray<SleyRun> runs = SleyRun.Across(plan.Ends.Total.Value.Count, plan.Ends.FloatingSelvedges, fit.Sley);
        int dents = runs[^1].LastDent;
        yield return new ParagraphBlock($"The reed, {fit.Name}: {Words.Count(dents)} dents in use. Begin {Words.Of(dents / 2, "dent")} to the left of its middle.");
        yield return new TableBlock(
            [new TableColumn("Dents, from the left"), new TableColumn("Ends in a dent"), new TableColumn("Ends", true)],
            [.. runs.Select(r => new TableRow([Through(r.FirstDent, r.LastDent), r.EndsInDents, Through(r.FirstEnd, r.LastEnd)]))]);
    }

    private static string Through(int first, int last) => first == last ? Words.Count(first) : $"{Words.Count(first)} to {Words.Count(last)}";
}
