using System.Text.RegularExpressions;
using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;

namespace Clothwright.Published.Tests.Yarns;

public partial class YarnCountsTests
{
    public static TheoryData<CheckRow> Rows => CheckRow.All("yarn-counts.md");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Counts_convert_as_published(CheckRow row)
    {
        LinearDensity yarn = Yarn(row.Inputs);
        Dictionary<string, double> expected = CheckRow.Pairs(row.Expected);
        if (expected.Count == 0) expected.Add(row.Inputs.Split('=')[0], CheckRow.Numbers(row.Expected).Single());
        foreach ((string name, double value) in expected)
        {
            CountSystem system = CheckRow.System(name) ?? throw new InvalidOperationException($"{row.Id}: {name} is not a count.");
            row.Check(value, system.Definition().NumberOf(yarn));
        }

        Match nearest = NearestTrade().Match(row.Expected);
        if (nearest.Success)
        {
            Assert.Equal(nearest.Groups[2].Value, TradeCounts.Nearest(yarn, CountSystems.Parse(nearest.Groups[1].Value).Value)!.Count.Label);
        }
    }

    private static LinearDensity Yarn(string inputs)
    {
        if (CheckRow.Word(inputs, "label") is { } label)
        {
            return LinearDensity.FromTex(YarnCount.Parse(label, CountSystems.Parse(CheckRow.Word(inputs, "system")!).Value).Value.Tex);
        }

        if (YarnLabel.Parse(inputs).TryGet(out YarnLabel? printed)) return LinearDensity.FromTex(printed.Tex);
        Dictionary<string, double> given = CheckRow.Pairs(inputs);
        if (given.TryGetValue("length_yd", out double yards))
        {
            return LinearDensity.FromMassAndLength(MassText.Parse($"{given["mass_grain"]} grains").Value, Length.FromYards(yards));
        }

        if (given.TryGetValue("length_m", out double metres))
        {
            return LinearDensity.FromMassAndLength(Mass.FromGrams(given["mass_g"]), Length.FromMetres(metres));
        }

        (string name, double number) = given.Single();
        return YarnCount.Of(CheckRow.System(name)!.Value, number).ToLinearDensity().Value;
    }

    [GeneratedRegex(@"nearest trade (\w+) = (\S+)", RegexOptions.None, 1000)]
    private static partial Regex NearestTrade();
}
