using Clothwright.Core.Colours;
using Clothwright.Core.Plans.Cautions;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Published.Tests.Plans;

/// <summary>The exemptions from testing by the table.</summary>
public class FlammabilityTableTests
{
    private const string Table = "Tables/flammability.md";

    public static TheoryData<string> Rows() => CheckRow.Ids(Table, "Y");

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_rule_says_what_is_published(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        if (id == "YF-H01")
        {
            row.Check([FlammabilityRule.ExemptMass.GramsPerSquareMetre]);
            Assert.Equal(row["ounces"], FlammabilityRule.ExemptMass.OuncesPerSquareYard, 1e-9);
            return;
        }

        var yarn = new Yarn(
            "y", "y", Derived.Decision("tex", LinearDensity.FromTex(50)), FibreBlend.Parse(row.Text("fibres")).Value, YarnConstruction.Spun, new SrgbColour(0, 0, 0));
        FlammabilityFinding finding = FlammabilityRule.Of([yarn], row.Text("surface") == "raised", ArealDensity.FromGramsPerSquareMetre(row["mass"]));
        Assert.Equal(row.Expected[0], finding.ToString());
    }
}
