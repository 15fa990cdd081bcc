using System.Text;
using System.Text.Json.Nodes;
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

    /// <summary>The same for a program; values in base units, the unit named by <c>measures</c>.</summary>
    public static JsonObject Json(Working working) => new()
    {
        ["label"] = working.Label,
        ["measures"] = working.Kind.ToString(),
        ["value"] = working.BaseValue,
        ["standardDeviation"] = working.Spread.StandardDeviation,
        ["upper95"] = working.Upper95,
        ["rule"] = working.Rule.Name,
        ["formula"] = working.Rule.Formula,
        ["source"] = working.Rule.Source.Name,
        ["sourceKind"] = working.Rule.Source.Kind.ToString(),
        ["causes"] = new JsonArray([.. working.Spread.Shares.Select(s => new JsonObject { ["cause"] = s.Cause.Name, ["movement"] = s.Movement, ["source"] = s.Cause.Source.Name })]),
        ["inputs"] = new JsonArray([.. working.Inputs.Select(Json)]),
    };

    private static void Append(StringBuilder text, Working working, UnitStyle style, int depth, HashSet<Working> seen)
    {
        string indent = new(' ', depth * 3);
        bool known = !seen.Add(working);
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
