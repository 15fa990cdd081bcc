using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Yarns;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Setts;

/// <summary>The advice beside the charts weavers use.</summary>
public class CustomarySettsTests
{
    private const string Table = "Tables/customary-setts.md";

    public static TheoryData<string> Rows() => CheckRow.Ids(Table, "K");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Advice_from_drape_to_everyday_holds_the_charts(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        SettRange range = AdvisedRange(row);
        string verdict = Sett.FromPerInch(row["low"]) < range.Low ? "below" : Sett.FromPerInch(row["high"]) > range.High ? "above" : "within";
        Assert.True(row.Expected[0] == verdict, $"{id}: {verdict}; advised {range.Low.PerInch:0.0} to {range.High.PerInch:0.0} per inch.");
    }

    [Fact]
    public void Most_charts_lie_within_the_advice_and_most_others_overlap_it()
    {
        CheckRow[] rows = [.. MarkdownTable.Load(Table).Rows.Select(r => CheckRow.Load(Table, r["id"]))];
        int within = rows.Count(r => AdvisedRange(r) is var range && range.Holds(Sett.FromPerInch(r["low"])) && range.Holds(Sett.FromPerInch(r["high"])));
        int overlapping = rows.Count(r => AdvisedRange(r) is var range && Sett.FromPerInch(r["low"]) <= range.High && Sett.FromPerInch(r["high"]) >= range.Low);
        Assert.True(within >= 0.7 * rows.Length, $"{within} of {rows.Length} within");
        Assert.True(overlapping >= 0.8 * rows.Length, $"{overlapping} of {rows.Length} overlapping");
    }

    private static SettRange AdvisedRange(CheckRow row)
    {
        CountSystem system = CountSystems.Parse(row.Text("system")).Value;
        Yarn yarn = PublishedYarn.Of(row.Text("fibre"), system, row.Text("count"));
        Drawdown weave = Drawdown.Parse(row.Text("weave") == "plain" ? "10/01" : "1100/0110/0011/1001").Value;
        return new SettRange(
            SettAdvice.For(SettQuestion.About(yarn, weave, ClothPurpose.Drape)).EndsRange.Low,
            SettAdvice.For(SettQuestion.About(yarn, weave, ClothPurpose.Everyday)).EndsRange.High);
    }
}
