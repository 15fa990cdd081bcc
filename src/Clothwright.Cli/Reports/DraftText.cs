using System.Text;
using System.Text.Json.Nodes;
using Clothwright.Core.Weaves;

namespace Clothwright.Cli.Reports;

/// <summary>A draft drawn with characters, as it stands at the loom: first pick at the bottom, threading on top.</summary>
internal static class DraftText
{
    private const int MostEnds = 96;
    private const int MostPicks = 48;

    /// <summary>The draft; of a large one the first ends and picks.</summary>
    public static string Of(Draft draft)
    {
        int ends = Math.Min(draft.Ends, MostEnds);
        int picks = Math.Min(draft.Picks, MostPicks);
        Drawdown cloth = draft.Drawdown();
        var text = new StringBuilder();
        for (int shaft = draft.Shafts; shaft >= 1; shaft--)
        {
            for (int end = 0; end < ends; end++) text.Append(draft.Threading[end].Contains(shaft) ? Sign(shaft) : '·');
            text.Append("  ");
            foreach (ShaftSet treadle in draft.TieUp) text.Append(treadle.Contains(shaft) ? 'o' : '·');
            text.AppendLine();
        }

        text.AppendLine();
        for (int pick = picks - 1; pick >= 0; pick--)
        {
            for (int end = 0; end < ends; end++) text.Append(cloth[pick, end] ? '#' : '.');
            text.Append("  ");
            if (draft.LiftPlan.IsEmpty)
            {
                for (int treadle = 1; treadle <= draft.Treadles; treadle++) text.Append(draft.Treadling[pick].Contains(treadle) ? Sign(treadle) : '·');
            }
            else
            {
                text.Append("lift ").Append(draft.LiftPlan[pick]);
            }

            text.AppendLine();
        }

        if (ends < draft.Ends || picks < draft.Picks) text.AppendLine($"(the first {ends} of {draft.Ends} ends and {picks} of {draft.Picks} picks)");
        return text.ToString();
    }

    /// <summary>The drawdown for a program: rows of 0 and 1, first pick first.</summary>
    public static JsonArray Rows(Drawdown cloth) => [.. cloth.ToString().Split('/').Select(r => (JsonNode)r)];

    private static char Sign(int number) => number < 10 ? (char)('0' + number) : number < 36 ? (char)('a' + number - 10) : '+';
}
