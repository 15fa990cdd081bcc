using System.Text;
using System.Text.RegularExpressions;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Wordings;
using Clothwright.Core.Workings;
using Clothwright.TestKit;

namespace Clothwright.Interchange.Tests.Samples;

/// <summary>Whether what the samples lead to can be read by someone who has no English.</summary>
public sealed partial class GermanSampleTests
{
    private static readonly Wording German = Wording.Of("de");

    public static TheoryData<string> Samples =>
        [.. Directory.GetFiles(Repository.PathOf("samples"), "*.json").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Samples))]
    public void No_English_is_left_in_a_German_handout_but_names(string sample)
    {
        PlanResult plan = SamplePlans.Of(sample);
        Handout handout = HandoutComposer.Compose(plan, new HandoutOptions { Wording = German });
        Assert.Equal("de", handout.Wording.Language);
        AssertGerman(plan, handout.Sections.SelectMany(s => s.Blocks.SelectMany(Texts).Prepend(s.Heading)).Prepend(handout.Makes));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void No_English_is_left_in_German_workings_but_names_and_sources(string sample)
    {
        PlanResult plan = SamplePlans.Of(sample);
        IEnumerable<Working> workings = HandoutComposer.Compose(plan).Sections.SelectMany(s => s.Blocks).OfType<WorkingsBlock>().SelectMany(b => b.Workings).SelectMany(All).Distinct();
        AssertGerman(plan, workings.SelectMany(w => w.Spread.Shares.Select(s => s.Cause.Name).Concat([w.Label, w.Rule.Name, w.Rule.Formula])).Distinct().Select(German.Tell));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Warnings_and_cautions_are_told_in_German(string sample)
    {
        PlanResult plan = SamplePlans.Of(sample);
        AssertGerman(plan, plan.Warnings.SelectMany(w => (string[])[w.Text, w.Advice]).Concat(plan.Cautions.Select(c => c.Text)).Select(German.Tell));
    }

    private static IEnumerable<Working> All(Working working) => working.Inputs.SelectMany(All).Prepend(working);

    private static IEnumerable<string> Texts(HandoutBlock block) => block switch
    {
        ParagraphBlock paragraph => [paragraph.Text],
        CautionsBlock cautions => cautions.Cautions,
        ClothBlock cloth => [cloth.Caption],
        DraftBlock draft => [draft.Caption],
        FiguresBlock figures => figures.Figures.SelectMany(f => (string[])[f.Label, f.Metric, f.Customary, f.Note]),
        MeasureBarBlock bar => [bar.Text],
        SettScaleBlock scale => scale.Stops.Concat(scale.Limits).Select(s => s.Name),
        StepsBlock steps => steps.Steps.SelectMany(s => s.Details.Concat(s.Ticks.SelectMany(t => t.Marks.Prepend(t.Caption))).Prepend(s.Text).Prepend(s.Title)),
        TableBlock table => table.Columns.Select(c => c.Heading).Concat(table.Rows.SelectMany(r => r.Cells)),
        WarpStripBlock strip => strip.Parts.Select(p => p.Name),
        WorkingsBlock workings => workings.Groups.Select(g => g.Heading),
        _ => [],
    };

    private static void AssertGerman(PlanResult plan, IEnumerable<string> told)
    {
        string[] names =
        [
            plan.Request.Title, .. plan.Request.Shelf.Select(y => y.Name), .. plan.Pieces.Select(p => p.Piece.Name), plan.Loom.Name, plan.Reed?.Name ?? plan.Loom.Name,
            .. plan.Request.Bench.Looms.Select(l => l.Name), .. plan.Request.Bench.Reeds.Select(r => r.Name), .. plan.Request.Bench.Heddles.Select(h => h.Name),
        ];
        string[] english = [.. told.Where(t => EnglishWord().IsMatch(Without(t, names))).Distinct()];
        Assert.True(english.Length == 0, string.Join('\n', english));
    }

    private static string Without(string text, string[] names)
    {
        var bare = new StringBuilder(text);
        foreach (string name in names.OrderByDescending(n => n.Length))
        {
            bare.Replace(name, "");
            bare.Replace(char.ToUpperInvariant(name[0]) + name[1..], "");
        }

        return bare.ToString();
    }

    // Words that stand in nearly every English sentence of the trade and in no German one.
    [GeneratedRegex(@"\b(the|and|of|with|for|is|are|to|from|each|this|that|it|by|at|on|or|per|ends?|picks?|weft|sett|yarn|cloth|warp|length|width|wool|cotton|linen|silk|twill|shafts?|treadles?|heddles?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex EnglishWord();
}
