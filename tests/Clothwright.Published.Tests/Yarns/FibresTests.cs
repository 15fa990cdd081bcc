using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;

namespace Clothwright.Published.Tests.Yarns;

public class FibresTests
{
    // The tables' names for fibres where they are not the catalogue's own.
    private static readonly Dictionary<string, string> Ids = new()
    {
        ["wool, carded"] = "wool-woollen",
        ["wool, combed"] = "wool-worsted",
        ["viscose or rayon"] = "viscose",
        ["cotton (lumen filled)"] = "cotton",
        ["cotton (Upper)"] = "cotton",
        ["wool (64s)"] = "merino",
        ["wool untreated"] = "wool-woollen",
        ["wool superwash"] = "superwash-wool",
    };

    public static TheoryData<CheckRow> Rows => CheckRow.All("fibres.md");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Fibres_are_as_published(CheckRow row)
    {
        double[] expected = CheckRow.Numbers(row.Expected);
        double[] given = CheckRow.Numbers(row.Inputs);
        switch (row.Id)
        {
            case "YF-E01" or "YF-E02" or "YF-E03":
                CheckEach(row, expected, f => f.CommercialRegainEurope.Value.Percent);
                break;
            case "YF-E04":
                CheckEach(row, expected, f => f.CommercialRegainUnitedStates.Value.Percent);
                break;
            case "YF-E05":
                row.Check(expected[0], Find(row.Inputs).CommercialRegainUnitedStates.Value.Percent);
                row.Check(expected[1], Find(row.Inputs).CommercialRegainEurope.Value.Percent);
                break;
            case "YF-E06":
                row.Check(expected[0], Find(row.Inputs).DryDensity!.Value.GramsPerCubicCentimetre);
                row.Check(expected[1], Find(row.Inputs).Density.Value.GramsPerCubicCentimetre);
                break;
            case "YF-E07":
                CheckEach(row, [.. expected.Take(3)], f => f.Density.Value.GramsPerCubicCentimetre);
                break;
            case "YF-E08":
                Assert.Equal(given[0], Find("cotton").Density.Value.GramsPerCubicCentimetre, 9);
                row.Check(CheckRow.Pairs(row.Expected)["cm3_per_g"], 1 / Find("cotton").Density.Value.GramsPerCubicCentimetre);
                break;
            case "YF-E09":
                row.Check(expected[0], Find("cotton").Density.Value.GramsPerCubicCentimetre / Find("wool").Density.Value.GramsPerCubicCentimetre);
                break;
            case "YF-E10":
                row.Check(CheckRow.Pairs(row.Expected)["gf_per_den"], Tenacity.GramForcePerDenierFromCentinewtonPerTex(given[0] * 100));
                break;
            case "YF-E11":
                row.Check(expected[0], Tenacity.CentinewtonPerTexFromGramForcePerDenier(given[0]));
                break;
            case "YF-E12":
                Density viscose = Density.FromGramsPerCubicCentimetre(given[2]);
                row.Check(expected[0], Tenacity.CentinewtonPerTexFromMegapascal(given[0], viscose));
                row.Check(expected[1], Tenacity.CentinewtonPerTexFromMegapascal(given[1], viscose));
                break;
            case "YF-E13":
                CheckRanking(row.Inputs, expected);
                break;
            case "YF-E14":
                Assert.True(Find("cotton").WetStrength.Value.Value > 1);
                Assert.InRange(Find("viscose").WetStrength.Value.Value, 0.4, 0.6);
                break;
            case "YF-E15":
                FeltingClass[] classes = [.. Names(row.Inputs, ';').Select(n => Find(n).Felting)];
                Assert.True(classes[0] >= FeltingClass.Moderate);
                Assert.Equal([FeltingClass.Resisted, FeltingClass.None, FeltingClass.None], classes[1..]);
                break;
            default:
                Assert.Fail($"No check is written for {row.Id}.");
                break;
        }
    }

    // Each published value lies within two standard deviations of what the catalogue holds (the edge of an even range lies at 1.73), and the order of the fibres is the published one.
    private static void CheckRanking(string inputs, double[] expected)
    {
        Fibre[] fibres = [.. Names(inputs, ',').Select(Find)];
        double[] stretch = [.. fibres.Select(f => f.Elongation.Value.Percent)];
        Assert.Equal(stretch.Order(), stretch);
        foreach ((Fibre fibre, double value) in fibres.Zip(expected))
        {
            double two = 2 * fibre.Elongation.StandardDeviation * 100;
            Assert.InRange(value, fibre.Elongation.Value.Percent - two, fibre.Elongation.Value.Percent + two);
        }
    }

    private static void CheckEach(CheckRow row, double[] expected, Func<Fibre, double> value)
    {
        Fibre[] fibres = [.. Names(row.Inputs, ';').Select(Find)];
        Assert.Equal(expected.Length, fibres.Length);
        foreach ((Fibre fibre, double number) in fibres.Zip(expected)) row.Check(number, value(fibre));
    }

    private static IEnumerable<string> Names(string cell, char between) => cell.Split(between).Select(n => n.Trim());

    private static Fibre Find(string name) => FibreCatalogue.Find(Ids.GetValueOrDefault(name, name)).Value;
}
