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
        sections.Add(new HandoutSection("At a glance", [.. Note(chosen), GlanceText.Of(plan, chosen), .. ClothLooks.Blocks(plan)]));
        sections.Add(new HandoutSection("Materials", MaterialsText.Of(plan, chosen)));
        sections.Add(new HandoutSection("Tools", [ToolsText.Of(plan, threading)]));
        sections.Add(new HandoutSection("Draft", DraftText.Of(plan, threading)));
        sections.Add(new HandoutSection("Warp colour order", WindingText.Of(plan)));
        sections.Add(new HandoutSection("The warp, front to back", [StripText.Of(plan)]));
        AddCautions(sections, plan);
        sections.Add(new HandoutSection("Step by step", [new StepsBlock([.. DressingSteps.Of(plan, threading), .. WeavingSteps.Of(plan), .. FinishingSteps.Of(plan)])]));
        sections.Add(new HandoutSection("Measure and write down", MeasuresText.Of(plan)));
        if (chosen.Workings) sections.Add(Workings(plan));
        return new Handout(plan.Request.Title, MakesText.Of(plan), sections.ToImmutable()) { Author = chosen.Author, Edition = chosen.Edition };
    }

    private static IEnumerable<HandoutBlock> Note(HandoutOptions options) =>
        string.IsNullOrWhiteSpace(options.Note) ? [] : [new ParagraphBlock(options.Note)];

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

    private static HandoutSection Workings(PlanResult plan) => new(
        "Workings",
        [
            new ParagraphBlock("How every figure came to be: the rule, its source, how far the figure may be off, and below it, set in, what went into it. A figure that comes up again is worked only once."),
            new WorkingsBlock([.. plan.Figures.All.Select((Figure f) => f.Value.Working)]),
        ])
    { StartsPage = true };
}
