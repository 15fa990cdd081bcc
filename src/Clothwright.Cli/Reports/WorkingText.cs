using System.Text;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Cli.Reports;

/// <summary>Prints how a number came to be, as a tree: what it is, by which rule, from which source, how sure.</summary>
internal static class WorkingText
{
    private const int MostCauses = 4;

    /// <summary>The tree, one number a line with its rule below; a number that occurs twice is written out once.</summary>
    public static string Write(Working working, UnitStyle style)
    {
        var text = new StringBuilder();
        Append(text, working, style, depth: 0, seen: []);
        return text.ToString().TrimEnd();
    }

    private static void Append(StringBuilder text, Working working, UnitStyle style, int depth, HashSet<(string Label, double Value, Rule Rule)> seen)
    {
        string indent = new(' ', depth * 3);
        bool known = !seen.Add((working.Label, working.BaseValue, working.Rule));
        text.Append(indent).Append(working.Label).Append(" = ").Append(working.Format(style));
        if (working.Spread.StandardDeviation > 0)
        {
            text.Append("  (likely ").Append(QuantityText.Format(working.Kind, working.Lower95, style))
                .Append(" to ").Append(QuantityText.Format(working.Kind, working.Upper95, style)).Append(')');
        }

        if (known)
        {
            text.AppendLine(working.Inputs.IsEmpty ? "" : "  (worked out above)");
            return;
        }

        text.AppendLine().Append(indent).Append("   ");
        text.AppendLine(working.Rule.Name == working.Label || working.Inputs.IsEmpty
            ? $"{working.Rule.Formula}; {working.Rule.Source}"
            : $"{working.Rule.Name}: {working.Rule.Formula}; {working.Rule.Source}");
        if (depth == 0) AppendCauses(text, working);
        foreach (Working input in working.Inputs) Append(text, input, style, depth + 1, seen);
    }

    // Shares of the variance, so that they sum to the whole.
    private static void AppendCauses(StringBuilder text, Working working)
    {
        double variance = working.Spread.StandardDeviation * working.Spread.StandardDeviation;
        if (variance == 0) return;
        text.AppendLine("   how sure it is rests on:");
        foreach (SpreadShare share in working.Spread.Shares.Take(MostCauses))
        {
            text.AppendLine($"   {share.Movement * share.Movement / variance * 100,4:0} %  {share.Cause.Name} ({share.Cause.Source})");
        }
    }
}
