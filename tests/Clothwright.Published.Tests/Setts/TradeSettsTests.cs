using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Setts.Reeds;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Yarns;

namespace Clothwright.Published.Tests.Setts;

/// <summary>Setts that working weavers use.</summary>
public class TradeSettsTests
{
    private const string Table = "Tables/trade-setts.md";

    public static TheoryData<string> Rows() => CheckRow.Ids(Table, "F");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Advice_for_the_purpose_holds_the_trade_fact(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        double fact = double.Parse(row.Expected[0], System.Globalization.CultureInfo.InvariantCulture);
        SettAdvice advice = SettAdvice.For(Question(row));
        Assert.True(
            advice.EndsRange.Holds(Sett.FromPerInch(fact)),
            $"{id}: {advice.EndsRange.Low.PerInch:0.0} to {advice.EndsRange.High.PerInch:0.0} per inch, advised {advice.Ends.Value.PerInch:0.0}, M {advice.Counts.MeanEndFloat:0.00}.");
        if (row.TextOrNull("heddles") is null) return;
        int layers = advice.Question.Layers;
        Assert.Contains(advice.Reeds, fit => fit.Heddles == (int)row["heddles"] && Math.Abs(fit.Sett.PerInch - fact * layers) < 1e-9);
    }

    [Fact]
    public void Heddles_that_share_the_sett_add_up()
    {
        RigidHeddle ten = RigidHeddle.Parse("10-dent", 2).Value;
        RigidHeddle seven = RigidHeddle.Parse("7.5-dent", 3).Value;
        var twenty = ReedFitting.Fits(Sett.FromPerInch(20), [], [ten]);
        var twentyTwo = ReedFitting.Fits(Sett.FromPerInch(22.5), [], [seven]);
        Assert.Equal((2, 20.0, 0.0), (twenty[0].Heddles, Math.Round(twenty[0].Sett.PerInch, 9), Math.Round(twenty[0].Error.Value, 9)));
        Assert.Equal((3, 22.5, 0.0), (twentyTwo[0].Heddles, Math.Round(twentyTwo[0].Sett.PerInch, 9), Math.Round(twentyTwo[0].Error.Value, 9)));
    }

    private static SettQuestion Question(CheckRow row)
    {
        Yarn warp = PublishedYarn.Of(row.Text("fibre"), CountSystems.Parse(row.Text("system")).Value, row.Text("count"), ConstructionNotes.Parse(row.TextOrNull("construction") ?? "spun").Value);
        bool withTabby = row.TextOrNull("weft-factor") is not null;
        Yarn pattern = withTabby ? PublishedYarn.OfTex(row.Text("fibre"), warp.LinearDensity.Value.Tex * row["weft-factor"]) : YarnStrands.SideBySide(warp, row.TextOrNull("strands") is null ? 1 : (int)row["strands"]);
        SettQuestion question = SettQuestion.About(warp, WeaveCatalogue.Make(row.Text("weave")).Value.Draft.Drawdown(), ClothPurposeText.Parse(row.Text("purpose")).Value, pattern) with
        {
            Layers = row.TextOrNull("layers") is null ? 1 : (int)row["layers"],
            Width = row.TextOrNull("width") is null ? null : Length.FromCentimetres(row["width"]),
            ToBeFulled = row.TextOrNull("fulled") is not null,
            Heddles = row.TextOrNull("heddle") is null ? [] : [RigidHeddle.Parse(row.Text("heddle"), (int)row["heddles"]).Value],
        };
        return withTabby ? question with { Weft = new ThreadSystem([pattern, warp], ThreadOrder.Of(0, 1)) } : question;
    }
}
