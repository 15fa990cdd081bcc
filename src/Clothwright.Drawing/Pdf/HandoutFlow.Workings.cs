using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Drawing.Figures;

namespace Clothwright.Drawing.Pdf;

/// <summary>The appendix: how each figure came to be.</summary>
internal sealed partial class HandoutFlow
{
    private const float LevelIndent = 11;
    private const int DeepestIndent = 9;
    private readonly HashSet<Working> _shown = new(ReferenceEqualityComparer.Instance);

    private void AddWorkings(WorkingsBlock block)
    {
        foreach (Working working in block.Workings) AddWorking(working, 0);
    }

    private void AddWorking(Working working, int level)
    {
        float indent = Math.Min(level, DeepestIndent) * LevelIndent;
        float space = level == 0 ? 9 : 3;
        bool again = !_shown.Add(working);
        string metric = working.Format(UnitStyle.Metric);
        string customary = working.Format(UnitStyle.Customary);
        string line = $"{working.Label} = {metric}" + (metric == customary ? "" : $" ({customary})");
        if (again && !working.Inputs.IsEmpty) line += ", as worked above";
        AddParagraph(line, level == 0 ? PageStyles.Strong : PageStyles.SmallStrong, width, indent, space, keepWithNext: !again);
        if (again) return;
        AddParagraph(RuleText(working.Rule), PageStyles.Small, width, indent, 0, keepWithNext: true);
        AddParagraph(SourceText(working), PageStyles.SmallNote, width, indent, 0);
        foreach (Working input in working.Inputs) AddWorking(input, level + 1);
    }

    private static string RuleText(Rule rule) => rule.Name == rule.Formula ? rule.Formula : $"{rule.Name}: {rule.Formula}";

    private static string SourceText(Working working)
    {
        string text = $"Source: {working.Rule.Source}.";
        if (working.Spread.StandardDeviation <= 0) return text;
        string low = QuantityText.Format(working.Kind, Math.Max(0, working.Lower95), UnitStyle.Metric);
        string high = QuantityText.Format(working.Kind, working.Upper95, UnitStyle.Metric);
        return $"{text} Nine times in ten between {low} and {high}.";
    }
}
