using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;

namespace Clothwright.Published.Tests.Yarns;

public class KnittingClassesTests
{
    public static TheoryData<CheckRow> Rows => CheckRow.All("knitting-classes.md");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Thickness_classes_are_named_as_published(CheckRow row)
    {
        double[] given = CheckRow.Numbers(row.Inputs);
        int[] classes = row.Id switch
        {
            "YF-D01" or "YF-D02" or "YF-D03" or "YF-D04" => Numbers(KnittingClasses.FromGauge(given[0])),
            "YF-D05" or "YF-D06" => Numbers(KnittingClasses.FromWraps(Sett.FromPerInch(given[0]))),
            "YF-D07" or "YF-D08" or "YF-D09" => Named(row.Inputs.Split('(')[0], KnittingRegion.Australia),
            "YF-D10" or "YF-D11" => Named(row.Inputs.Split('(')[0], KnittingRegion.UnitedKingdom),
            "YF-D12" => Numbers(KnittingClasses.FromGrist(YarnCount.Of(CountSystem.YardsPerPound, given[0]).ToLinearDensity().Value)),
            "YF-D13" => [],
            _ => throw new InvalidOperationException($"No check is written for {row.Id}."),
        };
        if (row.Id == "YF-D13")
        {
            row.Check(CheckRow.Pairs(row.Expected)["m_per_100g"], YarnCount.Of(CountSystem.YardsPerPound, given[0]).ResultantIn(CountSystem.MetresPer100Grams));
            return;
        }

        // Numbers above 7 in the cell are edges of ranges, not classes.
        Assert.Equal(CheckRow.Numbers(row.Expected).Where(n => n <= 7).Select(n => (int)n), classes);
        if (classes.Length == 1 && row.Expected.Contains(' ', StringComparison.Ordinal) && char.IsDigit(row.Expected[0]))
        {
            Assert.Contains(KnittingClasses.All[classes[0]].Name, row.Expected, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("8 ply", "dk")]
    [InlineData("5 ply", "sport")]
    public void The_australian_name_means_the_class_of_the_american_name(string australian, string american) =>
        Assert.Equal(Named(australian, KnittingRegion.Australia), Named(american, KnittingRegion.UnitedStates));

    private static int[] Named(string name, KnittingRegion region) => Numbers(KnittingClasses.FromName(name, region).Value.Single().Classes);

    private static int[] Numbers(IEnumerable<KnittingClass> classes) => [.. classes.Select(c => c.Number)];
}
