using System.Collections.Immutable;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Publishing.Composing;

namespace Clothwright.Core.Publishing;

/// <summary>Makes the handout of a plan: what it makes, what it needs, how it is done, and how each figure came to be.</summary>
public static class HandoutComposer
{
    /// <summary>The handout.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">What it says beside the plan; nothing if left out.</param>
    public static Handout Compose(PlanResult plan, HandoutOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        HandoutOptions chosen = options ?? HandoutOptions.Plain;
        var threading = FullThreading.Of(plan);
        var sections = ImmutableArray.CreateBuilder<HandoutSection>();
        sections.Add(new HandoutSection("At a glance", [.. Note(chosen), GlanceText.Of(plan, chosen), .. ClothLooks.Blocks(plan), new MeasureBarBlock("Lay a rule on the bar: 10 cm above, 4 in below. If it is longer or shorter, print once more at 100 %, not fitted to the page.")]));
        sections.Add(new HandoutSection("Materials", MaterialsText.Of(plan, chosen)));
        sections.Add(new HandoutSection("Tools", [ToolsText.Of(plan, threading)]));
        sections.Add(new HandoutSection("Sett and reed", ReedText.Of(plan)));
        sections.Add(new HandoutSection("Draft", DraftText.Of(plan, threading)));
        sections.Add(new HandoutSection("Warp colour order", WindingText.Of(plan)));
        sections.Add(new HandoutSection("The warp, front to back", [StripText.Of(plan)]));
        AddCautions(sections, plan);
        sections.Add(new HandoutSection("Step by step", [new StepsBlock([.. DressingSteps.Of(plan, threading), .. WeavingSteps.Of(plan), .. FinishingSteps.Of(plan)])]));
        sections.Add(new HandoutSection("Measure and write down", MeasuresText.Of(plan)));
        if (chosen.Workings) sections.Add(WorkingsText.Of(plan));
        var handout = new Handout(plan.Request.Title, MakesText.Of(plan), sections.ToImmutable()) { Author = chosen.Author, Edition = chosen.Edition };
        return handout.In(chosen.Wording);
    }

    private static IEnumerable<HandoutBlock> Note(HandoutOptions options) =>
        string.IsNullOrWhiteSpace(options.Note) ? [] : [new ParagraphBlock(options.Note) { IsGiven = true }];

    private static void AddCautions(ImmutableArray<HandoutSection>.Builder sections, PlanResult plan)
    {
        if (!plan.Cautions.IsEmpty)
        {
            sections.Add(new HandoutSection("Cautions", [new CautionsBlock([.. plan.Cautions.Select(c => c.Text).Distinct(StringComparer.Ordinal)])]));
        }

        if (!plan.Warnings.IsEmpty)
        {
            sections.Add(new HandoutSection("Before you begin", [.. plan.Warnings.Select(w => new ParagraphBlock(Words.Sentence(w.ToString())))]));
        }
    }
}
