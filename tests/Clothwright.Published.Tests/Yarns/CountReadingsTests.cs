using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Yarns;

public class CountReadingsTests
{
    private static readonly Dictionary<string, CountSystem> Columns = new()
    {
        ["cotton"] = CountSystem.Cotton,
        ["worsted"] = CountSystem.Worsted,
        ["linen lea"] = CountSystem.Linen,
        ["metric (Nm)"] = CountSystem.Metric,
        ["spun silk English"] = CountSystem.SilkEnglish,
    };

    public static TheoryData<IReadOnlyDictionary<string, string>> Labels => [.. MarkdownTable.Load("Tables/count-readings.md", "label").Rows];

    public static TheoryData<IReadOnlyDictionary<string, string>> Sizes => [.. MarkdownTable.Load("Tables/yarn-sizes.md", "yarn").Rows];

    [Theory]
    [MemberData(nameof(Labels))]
    public void One_label_is_many_yarns(IReadOnlyDictionary<string, string> row)
    {
        ImmutableArray<YarnCount> readings = YarnCount.Readings(row["label"]);
        Assert.Equal(Columns.Count, readings.Length);
        foreach ((string column, CountSystem system) in Columns)
        {
            Assert.Equal(Number(row[column]), LinearDensity.FromTex(readings.Single(r => r.System == system).Tex).YardsPerPound, 0.5);
        }

        Assert.Equal(Number(row["metric in m/kg"]), readings.Single(r => r.System == CountSystem.Metric).ResultantIn(CountSystem.MetresPerKilogram), 0.5);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Common_yarns_have_their_size_by_rule(IReadOnlyDictionary<string, string> row)
    {
        CountSystem system = CountSystems.Parse(row["system"]).Value;
        string label = row["yarn"].Split(' ').Select(w => w.Trim('"', ',')).First(w => char.IsDigit(w[0]));
        YarnCount count = YarnCount.Parse(label, system).Value;
        foreach ((string column, CountSystem to) in new[]
        {
            ("yd/lb", CountSystem.YardsPerPound),
            ("tex", CountSystem.Tex),
            ("m/kg", CountSystem.MetresPerKilogram),
            ("m/100 g", CountSystem.MetresPer100Grams),
            ("yd/50 g", CountSystem.YardsPer50Grams),
        })
        {
            // Printed to its last digit, so right to half of it.
            int decimals = row[column].Contains('.', StringComparison.Ordinal) ? row[column].Split('.')[1].Length : 0;
            Assert.Equal(Number(row[column]), count.ResultantIn(to), Math.Pow(10, -decimals) * 0.500001);
        }
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
