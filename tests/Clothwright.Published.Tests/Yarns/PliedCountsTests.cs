using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Published.Tests.Yarns;

public class PliedCountsTests
{
    public static TheoryData<CheckRow> Rows => CheckRow.All("plied-counts.md");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Plied_counts_are_read_as_published(CheckRow row)
    {
        switch (row.Id)
        {
            case "YF-B12" or "YF-B13":
                double[] singles = CheckRow.Numbers(row.Inputs);
                row.Check(CheckRow.Pairs(row.Expected)["NeC_resultant"], CountSystem.Cotton.Definition().NumberOf(Together(CountSystem.Cotton, singles)));
                break;
            case "YF-B14":
                row.Check(CheckRow.Numbers(row.Expected).Single(), CountSystem.Denier.Definition().NumberOf(Together(CountSystem.Denier, CheckRow.Numbers(row.Inputs))));
                break;
            case "YF-B15":
                Derived<Ratio> takeUp = Derived.Given("take-up", Ratio.FromPercent(CheckRow.Pairs(row.Inputs)["take_up"]), Source.Measured);
                row.Check(CheckRow.Pairs(row.Expected)["yd_per_lb"], Count(row).ToLinearDensity(takeUp).Value.YardsPerPound);
                break;
            case "YF-B16":
                row.Check(CheckRow.Pairs(row.Expected)["take_up"], YarnCount.Parse(row.Inputs, CountSystem.Tex).Value.StatedTakeUp!.Value.Percent);
                break;
            case "YF-B18":
                row.Check(CheckRow.Numbers(row.Expected)[0], Count(row).ToLinearDensity().Value.YardsPerPound);
                // Ply first, three strands of twos: what reading by the size of the numbers or in the other order would give.
                row.Check(CheckRow.Numbers(row.Expected)[1], YarnCount.Parse("2 x 3", CountSystem.Cotton).Value.ToLinearDensity().Value.YardsPerPound);
                break;
            default:
                CheckPairs(row);
                break;
        }
    }

    private static void CheckPairs(CheckRow row)
    {
        YarnCount count = Count(row);
        Dictionary<string, double> expected = CheckRow.Pairs(row.Expected);
        Assert.NotEmpty(expected);
        foreach ((string name, double value) in expected)
        {
            double actual = name switch
            {
                "hanks_per_lb" => count.ResultantNumber,
                "singles" or "singles_nominal" => count.SinglesNumber,
                _ => count.ResultantIn(CheckRow.System(name) ?? throw new InvalidOperationException($"{row.Id}: {name} is not a count.")),
            };
            row.Check(value, actual);
        }
    }

    private static YarnCount Count(CheckRow row)
    {
        string label = CheckRow.Word(row.Inputs, "label") ?? row.Inputs;
        string? system = CheckRow.Word(row.Inputs, "system");
        return YarnCount.Parse(label, system is null or "no take-up stated" ? CountSystem.Tex : CountSystems.Parse(system).Value).Value;
    }

    private static LinearDensity Together(CountSystem system, double[] numbers) =>
        FoldedYarn.Together("folded", [.. numbers.Select(n => YarnCount.Of(system, n).ToLinearDensity())]).Value;
}
