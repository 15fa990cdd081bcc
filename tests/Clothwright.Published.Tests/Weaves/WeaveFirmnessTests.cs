using System.Globalization;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;

namespace Clothwright.Published.Tests.Weaves;

public class WeaveFirmnessTests
{
    private const string Table = "weave-firmness";

    // "exact" allows for the last bit of the division only.
    private const double Exact = 1e-12;

    public static TheoryData<string> Ids => WeaveTables.Ids(Table);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Firmness_follows_from_the_crossings_over(string id)
    {
        IReadOnlyDictionary<string, string> row = WeaveTables.Row(Table, id);
        Drawdown cloth = Drawdown.Parse(row["drawdown"]).Value;
        double tolerance = row["tolerance"] == "exact" ? Exact : double.Parse(row["tolerance"].Split(',')[0], CultureInfo.InvariantCulture);

        Assert.Equal(double.Parse(row["cff"], CultureInfo.InvariantCulture), WeaveCounts.Of(cloth).CrossingOverFirmness, tolerance);
        double floating = ClothFloats.Of(cloth, ClothReading.Repeat).All.Sum(t => t.Counts.Sum(c => (c.Length - 1.0) * c.Times));
        Assert.Equal(double.Parse(row["fyf"], CultureInfo.InvariantCulture), floating / (cloth.Ends * cloth.Picks), tolerance);
    }
}
