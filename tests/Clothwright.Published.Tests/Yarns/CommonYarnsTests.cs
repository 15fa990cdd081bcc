using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Published.Tests.Yarns;

public class CommonYarnsTests
{
    public static TheoryData<CheckRow> Rows => CheckRow.All("common-yarns.md");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Common_yarns_hold_what_is_published(CheckRow row)
    {
        double[] numbers = CheckRow.Numbers(row.Expected);
        switch (row.Id)
        {
            case "YF-C01":
                CheckEach(row, CountSystem.Cotton);
                break;
            case "YF-C02":
                CheckEach(row, CountSystem.Metric);
                break;
            case "YF-C05":
                CheckEach(row, CountSystem.Worsted);
                break;
            case "YF-C03" or "YF-C04":
                YarnCount lea = YarnCount.Parse(CheckRow.Word(row.Inputs, "label")!, CountSystem.Linen).Value;
                foreach ((string name, double value) in CheckRow.Pairs(row.Expected)) row.Check(value, lea.ResultantIn(CheckRow.System(name)!.Value));
                break;
            case "YF-C06":
                row.Check(numbers[0], Cotton("10/2").LengthOf(Mass.FromGrams(200)).Metres);
                break;
            case "YF-C07":
                row.Check(numbers[0], (Cotton("8/2") * Length.FromMetres(1500)).Grams);
                break;
            case "YF-C08":
                Derived<LinearDensity> strand = YarnCount.Parse("16/2", CountSystem.Cotton).Value.ToLinearDensity();
                row.Check(numbers[^1], FoldedYarn.Together("doubled", strand, strand).Value.YardsPerPound);
                row.Check(Cotton("8/2").Tex, FoldedYarn.Together("doubled", strand, strand).Value.Tex);
                break;
            case "YF-C09":
                Length ball = YarnLabel.Parse("109 yd / 50 g").Value.Length;
                row.Check(numbers[0], PackageReckoning.Holding(Derived.Decision("wanted", Length.FromMetres(1240)), ball).Value.Count);
                break;
            case "YF-C10":
                double rule = YarnCount.Parse("16/2", CountSystem.Linen).Value.ToLinearDensity().Value.YardsPerPound;
                double trade = YarnLabel.Parse("2700 yd/lb").Value.ToLinearDensity().Value.YardsPerPound;
                row.Check(numbers[0], (trade / rule - 1) * 100);
                break;
            default:
                Assert.Fail($"No check is written for {row.Id}.");
                break;
        }
    }

    private static LinearDensity Cotton(string label) => YarnCount.Parse(label, CountSystem.Cotton).Value.ToLinearDensity().Value;

    private static void CheckEach(CheckRow row, CountSystem system)
    {
        string[] labels = [.. row.Inputs.Split(';').Select(l => l.Trim().Split(' ', ',')[0])];
        double[] expected = CheckRow.Numbers(row.Expected);
        Assert.Equal(expected.Length, labels.Length);
        foreach ((string label, double value) in labels.Zip(expected)) row.Check(value, YarnCount.Parse(label, system).Value.ToLinearDensity().Value.YardsPerPound);
    }
}
