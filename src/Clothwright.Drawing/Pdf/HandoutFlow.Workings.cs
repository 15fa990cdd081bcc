using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Drawing.Pdf;

/// <summary>The appendix: how each figure came to be.</summary>
internal sealed partial class HandoutFlow
{
    private const float LevelIndent = 9;
    private const int DeepestIndent = 12;
    private readonly WorkingsShown _shown = new();

    private void AddWorkings(WorkingsBlock block)
    {
        foreach (Working working in block.Workings) AddWorking(working, 0);
    }

    // Head line and rule; then what went in: what was decided or given on one line each, what was worked above on one line together.
    private void AddWorking(Working working, int level)
    {
        if (!_shown.IsNew(working))
        {
            if (level == 0) AddParagraph($"{Equation(working)}, as worked above", PageStyles.SmallStrong, width, 0, 7);
            return;
        }

        AddParagraph(Equation(working), level == 0 ? PageStyles.Strong : PageStyles.SmallStrong, width, Indent(level), level == 0 ? 9 : 3, keepWithNext: true);
        AddParagraph($"{RuleText(working)}. {SourceText(working)}", PageStyles.Small, width, Indent(level), 0);
        var above = new List<string>();
        foreach (Working input in working.Inputs)
        {
            if (_shown.Has(input))
            {
                above.Add(Equation(input));
                continue;
            }

            AddAbove(above, level + 1);
            if (input.Inputs.IsEmpty) AddGiven(input, level + 1);
            else AddWorking(input, level + 1);
        }

        AddAbove(above, level + 1);
    }

    private void AddGiven(Working given, int level)
    {
        _shown.IsNew(given);
        string how = given.Rule.Source.Kind == SourceKind.Decision ? given.Rule.Source.Name : $"{RuleText(given)}. {SourceText(given)}";
        AddParagraph($"{Equation(given)}: {how}", PageStyles.Small, width, Indent(level), 1.5f);
    }

    private void AddAbove(List<string> above, int level)
    {
        if (above.Count == 0) return;
        AddParagraph($"As above: {string.Join("; ", above)}.", PageStyles.SmallNote, width, Indent(level), 1.5f);
        above.Clear();
    }

    private static float Indent(int level) => Math.Min(level, DeepestIndent) * LevelIndent;

    private static string Equation(Working working)
    {
        string metric = working.Format(UnitStyle.Metric);
        string customary = working.Format(UnitStyle.Customary);
        return $"{working.Label} = {metric}" + (metric == customary ? "" : $" ({customary})");
    }

    private static string RuleText(Working working) => working.Rule is var rule && (rule.Name == rule.Formula || rule.Name == working.Label) ? rule.Formula : $"{rule.Name}: {rule.Formula}";

    private static string SourceText(Working working)
    {
        string text = $"Source: {working.Rule.Source}.";
        if (working.Spread.StandardDeviation <= 0) return text;
        string low = QuantityText.Format(working.Kind, Math.Max(0, working.Lower95), UnitStyle.Metric);
        string high = QuantityText.Format(working.Kind, working.Upper95, UnitStyle.Metric);
        return $"{text} Nine times in ten between {low} and {high}.";
    }
}
