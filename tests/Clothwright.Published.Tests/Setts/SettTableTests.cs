using Clothwright.Core.Cloths;
using Clothwright.Core.Cloths.Geometry;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Diameters;
using Clothwright.Core.Setts.Limits;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;

namespace Clothwright.Published.Tests.Setts;

/// <summary>Sett limits and practical shares by the table.</summary>
public class SettTableTests
{
    private const string Table = "Tables/setts.md";

    public static TheoryData<string> Rows() => CheckRow.Ids(Table, "MP");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Setts_are_as_published(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        row.Check(id[0] == 'M' ? Limit(id, row) : Practice(id, row));
    }

    private static double[] Limit(string id, CheckRow row) => id switch
    {
        "M01" or "M02" => [PerInch(row, row["m"])],
        "M03" => [row["plain"] * AshenhurstIntersections.Spacing(1, 1, 1) / AshenhurstIntersections.Spacing(1, 1, row["m"])],
        "M04" => [PerInch(row, 1), PerInch(row, 2)],
        "M05" => [10 / AshenhurstIntersections.Spacing(row["warp"], row["weft"], row["m"])],
        "M06" => Brierley.PerInch(row["ne"], row["k"], row["f"], row["exponent"]) is var n ? [n, n / 0.254] : [],
        "M07" => [Brierley.PerInch(row["ne"], row["k"], row["f"], row["exponent"])],
        "M08" => [Brierley.Picks(row["square"], row["ends"], 60, 60)],
        "M09" => Factors(row) is var (warp, weft) ? [warp, CoverFactor.OfCloth(warp, weft)] : [],
        "M10" => [CoverFactor.OfTex(row["ends"], row["tex"]), CoverFactor.OfTexAsCotton(row["ends"], row["tex"])],
        "M11" => Square() is var p ? [p / 2, PeirceGeometry.Crimp(p, 2, 1), CoverFactor.Touching / p] : [],
        "M12" => BulkDensityDiameter.Millimetres(row["tex"], row["density"]) is var d ? [25.4 / PeirceJam.EndSpacing(d, d, 1, 1, 1)] : [],
        "M13" => [CoverFactor.Touching / PeirceJam.OtherSpacing(CoverFactor.Touching / row["k1"], 1, 1, 1, 1)],
        "M14" => [Floats(1.5), Floats(2), Floats(2.5)],
        "M15" => ThreadSection.FromFlattening(1, row["flattening"]) is var s ? [s.Width, s.Height, Square() / 2 * 2 * s.Height + s.Excess] : [],
        "M16" => [PeirceJam.OtherSpacing(row["p1"], 1, row["m1"], 1, row["m2"])],
        "M17" => WeaveCounts.Of(Drawdown.Parse(row.Text("weave")).Value) is var c ? [c.WeftTransitions, c.WarpTransitions, c.MeanEndFloat, c.MeanPickFloat] : [],
        _ => throw new InvalidOperationException($"No computation stands behind {id}."),
    };

    private static double[] Practice(string id, CheckRow row) => id switch
    {
        "P01" => [20 / PerInch(row, 1) * 100, 24 / PerInch(row, 1) * 100, 28 / PerInch(row, 1) * 100],
        "P02" => [row["share"] * PerInch(row, 1)],
        "P03" or "P05" => [Taylor(row)],
        "P04" => [Taylor(row), 94 / (1 - Taylor(row) / 100)],
        "P08" => [row["crimp"] / (1 + row["crimp"]) * 100],
        _ => throw new InvalidOperationException($"No computation stands behind {id}."),
    };

    private static double PerInch(CheckRow row, double meanFloat)
    {
        double d = 1 / AshenhurstDiameter.ThreadsPerInch(row["yards"], row["k"]);
        return 1 / AshenhurstIntersections.Spacing(d, d, meanFloat);
    }

    private static double Square() => PeirceJam.EndSpacing(1, 1, 1, 1, 1);

    private static double Floats(double meanFloat)
    {
        double jam = PeirceJam.EndSpacing(1, 1, meanFloat, meanFloat, 1);
        Assert.Equal(AshenhurstCurvature.Spacing(1, 1, meanFloat), jam, 1e-9);
        return CoverFactor.Touching / jam;
    }

    private static (double Warp, double Weft) Factors(CheckRow row) =>
        (CoverFactor.OfCottonCount(row["ends"], row["ne"]), CoverFactor.OfCottonCount(row["picks"], row["ne"]));

    private static double Taylor(CheckRow row) => TaylorTakeUp.Percent(row["multiplier"], row["picks"] / row["float"], row["ne"]);
}
