using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Diameters;
using Clothwright.Core.Setts.Limits;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Published.Tests.Setts;

/// <summary>Yarn diameters by the table.</summary>
public class DiameterTableTests
{
    private const string Table = "Tables/diameters.md";

    public static TheoryData<string> Rows() => CheckRow.Ids(Table, "Y");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Diameters_are_as_published(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        row.Check(id switch
        {
            "Y01" => [
                LinearDensity.TexOfOneYardPerPound,
                YarnCount.Of(CountSystem.Cotton, 1).Tex,
                YarnCount.Of(CountSystem.Metric, 1).Tex,
                YarnCount.Of(CountSystem.Worsted, 1).Tex],
            "Y02" => YarnCount.Parse(row.Text("count"), CountSystem.Cotton).Value is var count ? [LinearDensity.FromTex(count.Tex).YardsPerPound, count.Tex] : [],
            "Y03" or "Y04" or "Y05" or "Y06" or "Y07" => [AshenhurstDiameter.ThreadsPerInch(row["yards"], row["k"])],
            "Y08" => [PeirceDiameter.Millimetres(row["tex"])],
            "Y09" or "Y10" or "Y16" => [BulkDensityDiameter.Millimetres(row["tex"], row["density"])],
            "Y11a" or "Y11b" or "Y12" => [AshenhurstDiameter.GramsPerCubicCentimetreOf(row["k"])],
            "Y13" or "Y14" => Metric(row) is var (yarn, d) ? [yarn.Value.Tex, yarn.Value.YardsPerPound, 1 / d.Inches] : [],
            "Y15" => Metric(row) is var (yarn, d) ? [yarn.Value.Tex, yarn.Value.YardsPerPound, d.Millimetres] : [],
            "Y17" => [HandWrapped(row["wraps"])],
            _ => throw new InvalidOperationException($"No computation stands behind {id}."),
        });
    }

    private static (Derived<LinearDensity> Yarn, Length Diameter) Metric(CheckRow row)
    {
        Derived<LinearDensity> yarn = Derived.Decision("yarn", LinearDensity.FromTex(1000 / row["nm"]));
        return (yarn, AshenhurstDiameter.Of(yarn, Derived.Decision("K", Number.FromValue(row["k"]))).Value);
    }

    private static double HandWrapped(double wrapsPerInch)
    {
        Derived<Length> d = WrapsDiameter.Of(Derived.Decision("wraps", Sett.FromPerInch(wrapsPerInch)), WrapMeasure.Hand);
        return AshenhurstIntersections.Threads("ends", d, d, 1).Value.PerInch;
    }
}
