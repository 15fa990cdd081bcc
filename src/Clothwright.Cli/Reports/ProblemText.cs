using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Core.Quantities;

namespace Clothwright.Cli.Reports;

/// <summary>Writes a problem so that a person sees what, where and how to mend it.</summary>
internal static class ProblemText
{
    private const int LongestQuote = 100;

    /// <summary>Three lines at the most: the place and the fault, the text with a caret under the fault, the mend.</summary>
    public static string Write(InputProblem problem)
    {
        var text = new StringBuilder();
        text.Append("clothwright: ").Append(OneLine(problem.Where)).Append(": ").Append(OneLine(problem.What));
        if (problem.Text is { Length: > 0 and <= LongestQuote } quote && problem.Position is int position && !quote.AsSpan().ContainsAnyInRange('\0', '\u001f'))
        {
            text.AppendLine().Append("  ").Append(quote);
            text.AppendLine().Append("  ").Append(' ', Math.Clamp(position, 0, quote.Length)).Append('^');
        }

        return text.AppendLine().Append("  ").Append(OneLine(problem.Mend)).ToString();
    }

    /// <summary>The same for a program.</summary>
    public static JsonObject Json(InputProblem problem)
    {
        var inner = new JsonObject { ["what"] = problem.What, ["where"] = problem.Where, ["mend"] = problem.Mend };
        if (problem.Position is int position) inner["position"] = position;
        return new JsonObject { ["problem"] = inner };
    }

    /// <summary>The text on one line. What a person gave may hold control characters; a terminal must not obey them.</summary>
    public static string OneLine(string text) =>
        string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c));
}
