using System.Globalization;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis.Edges;

namespace Clothwright.Published.Tests.Weaves;

public class WeaveSelvedgeTests
{
    private const string Table = "weave-selvedges";

    public static TheoryData<string> Ids => WeaveTables.Ids(Table);

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_shuttle_misses_these_turns(string id)
    {
        IReadOnlyDictionary<string, string> row = WeaveTables.Row(Table, id);
        Draft draft = DraftNotation.Parse(row["draft"]).Value;
        int ends = int.Parse(row["ends"], CultureInfo.InvariantCulture);
        ClothSide start = Enum.Parse<ClothSide>(row["start"], ignoreCase: true);
        SelvedgeReport report = SelvedgeReport.Of(draft.Repeated(ends, draft.Picks).Drawdown(), start);

        Assert.Equal(row["missed"], Text(report, ends));
    }

    private static string Text(SelvedgeReport report, int ends)
    {
        var sides =
            from side in new[] { ClothSide.Right, ClothSide.Left }
            let picks = report.LoosePicksAt(side)
            where !picks.IsEmpty
            select $"{(side == ClothSide.Left ? "left" : "right")} {string.Join(' ', picks.Select(p => p + 1))}";
        string text = string.Join("; ", sides);
        Assert.Equal(report.PullsOut, report.Missed.Any(m => m.EndsMissed == ends));
        return report.IsClean ? "none" : text + (report.PullsOut ? ", all ends" : "");
    }
}
