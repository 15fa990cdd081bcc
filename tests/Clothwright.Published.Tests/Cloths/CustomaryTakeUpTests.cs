using Clothwright.Core.Cloths.Stages;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Published.Tests.Cloths;

/// <summary>What is foreseen of take-up and finishing holds what the trade is used to.</summary>
public class CustomaryTakeUpTests
{
    private const string Table = "Tables/customary-take-up.md";

    public static TheoryData<string> Rows() => CheckRow.Ids(Table, "T");

    [Theory]
    [MemberData(nameof(Rows))]
    public void What_is_foreseen_holds_the_habit_of_the_trade(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        Derived<Ratio> foreseen = Figure(Cloth(row), row.Text("figure"));
        bool holdsMiddle = row.TextOrNull("holds") == "middle";
        double low = foreseen.Working.Lower95 * 100;
        double high = foreseen.Working.Upper95 * 100;
        double tolerance = double.Parse(row.Tolerances[0], System.Globalization.CultureInfo.InvariantCulture);
        double[] habit = [.. row.Expected.Select(e => double.Parse(e, System.Globalization.CultureInfo.InvariantCulture))];
        if (holdsMiddle)
        {
            Assert.InRange(foreseen.Value.Percent, habit[0], habit[1]);
            return;
        }

        Assert.True(
            low <= habit[0] + tolerance && habit[1] <= high + tolerance,
            $"{id}: {foreseen.Value.Percent:0.00} %, likely {low:0.00} to {high:0.00} %; the trade is used to {habit[0]} to {habit[1]} %.");
    }

    // A spread so wide that it holds everything would foresee nothing: no figure is less sure than the trade's own ranges taken together.
    [Theory]
    [MemberData(nameof(Rows))]
    public void What_is_foreseen_still_says_something(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        Derived<Ratio> foreseen = Figure(Cloth(row), row.Text("figure"));
        Assert.InRange(foreseen.StandardDeviation, 0.005, row.Text("figure") == "warp-take-up" && row.Expected[1] == "30" ? 0.09 : 0.065);
    }

    private static ClothStages Cloth(CheckRow row)
    {
        CountSystem system = CountSystems.Parse(row.Text("system")).Value;
        Yarn warp = PublishedYarn.Of(row.Text("fibre"), system, row.Text("count"));
        Yarn weft = PublishedYarn.Of(row.Text("fibre"), system, row.TextOrNull("weft") ?? row.Text("count"));
        return ClothStages.Of(new StagesQuestion
        {
            Warp = ThreadSystem.Of(warp),
            Weft = ThreadSystem.Of(weft),
            Weave = Drawdown.Parse(row.Text("weave") == "plain" ? "10/01" : "1100/0110/0011/1001").Value,
            EndsInReed = Derived.Decision("ends", Sett.FromPerInch(row["sett"])),
            Picks = Derived.Decision("picks", Sett.FromPerInch(row.TextOrNull("picks") is null ? row["sett"] : row["picks"])),
            ToBeFulled = row.TextOrNull("fulled") is not null,
        });
    }

    private static Derived<Ratio> Figure(ClothStages cloth, string figure) => figure switch
    {
        "warp-take-up" => cloth.WarpTakeUp,
        "draw-in" => cloth.DrawIn,
        "length" => cloth.LengthShrinkage,
        "width" => cloth.WidthShrinkage,
        "reed-to-washed" => Derived.From<Ratio>(
            "reed to washed",
            new Rule("reed to washed", "1 − (1 − draw-in) (1 − shrinkage in width)", Source.Derivation),
            cloth.DrawIn,
            cloth.WidthShrinkage,
            (w, s) => 1 - (1 - w) * (1 - s)),
        _ => throw new InvalidOperationException($"No figure is called {figure}."),
    };
}
