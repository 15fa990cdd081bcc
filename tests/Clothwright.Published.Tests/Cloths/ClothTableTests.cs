using Clothwright.Core.Cloths;
using Clothwright.Core.Cloths.Geometry;
using Clothwright.Core.Cloths.Hand;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Diameters;
using Clothwright.Core.Weaves;
using Clothwright.Core.Yarns;

namespace Clothwright.Published.Tests.Cloths;

/// <summary>Cloth geometry, mass, firmness and bending by the table.</summary>
public class ClothTableTests
{
    private const string Table = "Tables/cloths.md";

    public static TheoryData<string> Rows() => CheckRow.Ids(Table, "CFS");

    [Theory]
    [MemberData(nameof(Rows))]
    public void Cloths_are_as_published(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        row.Check(id[0] == 'C' ? Cloth(id, row) : Firmness(id, row));
    }

    private static double[] Cloth(string id, CheckRow row) => id switch
    {
        "C01" => [MassPerArea.GramsPerSquareMetre(row["n1"], row["t1"], row["c1"], row["n2"], row["t2"], row["c2"])],
        "C02" => [MassPerArea.SquareSettPerCentimetre(row["mass"], row["tex"], row["crimp"])],
        "C03" => [PeirceGeometry.AngleRadians(row["p"], 1, row["h"]) * 180 / Math.PI, PeirceGeometry.Crimp(row["p"], 1, row["h"]) * 100],
        "C04" or "C05" => [PeirceGeometry.ApproximateCrimp(row["p"], row["h"]) * 100],
        "C06" => [ModularLength(row)],
        "C07" => Height(row) is var h ? [h, new WeaveGeometry(new(row["d1"], row["d1"]), new(row["d2"], row["d2"]), 1, row["p2"], 1, 1).Thickness(h)] : [],
        "C08" => EightTwo(row) is var c ? [c.WarpCrimp.Value.Percent, c.Mass.Value.GramsPerSquareMetre, c.Cover.Value.Percent, c.Thickness.Value.Millimetres] : [],
        "C09" => EightTwo(row) is var c ? [c.WarpCrimp.Value.Percent, c.Mass.Value.GramsPerSquareMetre, c.Cover.Value.Percent] : [],
        "C10" => 2 * MassPerArea.OuncesPerSquareYardOfSystem(row["per-inch"], row["ne"], row["crimp"]) is var oz
            ? [oz, oz * ArealDensity.GramsPerSquareMetrePerOuncePerSquareYard] : [],
        "C11" => [MassPerArea.OuncesPerSquareYardOfSystem(row["n1"], row["ne1"], row["c1"]) + MassPerArea.OuncesPerSquareYardOfSystem(row["n2"], row["ne2"], row["c2"])],
        "C12" => [ClothGeometry.Of(Question(PublishedYarn.Of("cotton", CountSystem.Cotton, "8/2"), "10/01", row["ends"], row["picks"]) with { Sharing = CrimpSharing.BendingBalance }).WarpShare.Value.Value],
        "C13" => [row["momme"] * MassPerArea.GramsPerSquareMetrePerMomme],
        "C14" => PeirceGeometry.ModularLength(1, 1, 0.5) is var l && PeirceGeometry.Exchange(1, l, l, row["stretch"]) is { } e ? [e.OwnHeight, e.OtherHeight, e.OtherPitch] : [],
        _ => throw new InvalidOperationException($"No computation stands behind {id}."),
    };

    private static double[] Firmness(string id, CheckRow row) => id switch
    {
        "F01" or "F02" or "F03" or "F04" or "F05" or "F06" or "F15" =>
            [ClothGeometry.Of(Question(PublishedYarn.Of("cotton", CountSystem.Cotton, "8/2"), row.Text("weave"), 20, 20)).CrossingOverFirmness],
        "F07" => JamPerMillimetre(row) is var s ? [WeaveFirmness.Phi(row["tex"], row["tex"], row["density"], s, s, WeaveFirmness.GeometricFactor(1, 1))] : [],
        "F08" => [WeaveFirmness.Phi(row["tex"], row["tex"], row["density"], row["per-inch"] / 25.4, row["per-inch"] / 25.4, WeaveFirmness.GeometricFactor(1))],
        "F09" => [BendingTest.LengthFactor(41.5), BendingTest.LengthFactor(7.1)],
        "F10" => [BendingTest.LengthFactor(43)],
        "F11" => [BendingTest.BendingLengthMillimetres(row["mass"], row["rigidity"])],
        "F12" => [DrapeCoefficient.ShadowMass(row["coefficient"], row["ring"])],
        "F13" => [DrapeCoefficient.FromArea(row["shadow"], row["disc"], row["sample"]) * 100],
        "F14" => Math.PI / 4 * row["micrometres"] * row["micrometres"] * 1e-3 * row["density"] is var tex
            ? [tex, BendingTest.FibreRigidityNewtonSquareMillimetre(tex, row["density"], row["modulus"], row["shape"]) * 1e5] : [],
        "F16" => [EightTwo(row).Tightness.Value.Percent],
        "S01" or "S02" or "S03" or "S04" => ThreadSection.FromHeight(1, row["share"]) is var s ? [s.Width, s.Width / s.Height] : [],
        _ => throw new InvalidOperationException($"No computation stands behind {id}."),
    };

    private static double ModularLength(CheckRow row)
    {
        // GATE takes 0.0444 √(T ÷ fibre density), a packing of 0.646.
        double sum = BulkDensityDiameter.Millimetres(row["t1"], 0.646 * row["density"]) + BulkDensityDiameter.Millimetres(row["t2"], 0.646 * row["density"]);
        double pitch = 10 / row["picks"];
        WeaveGeometry cloth = new(new(sum / 2, sum / 2), new(sum / 2, sum / 2), pitch, pitch, 1, 1);
        return PeirceGeometry.ModularLength(pitch, sum, cloth.HeightOfWarpCrimp(row["crimp"])) / sum;
    }

    private static double Height(CheckRow row) => PeirceGeometry.ApproximateHeight(row["p2"], row["c1"]);

    private static double JamPerMillimetre(CheckRow row) => 1 / (Math.Sqrt(3) * BulkDensityDiameter.Millimetres(row["tex"], row["density"]));

    private static ClothGeometry EightTwo(CheckRow row)
    {
        Yarn yarn = PublishedYarn.Of("cotton", CountSystem.Cotton, "8/2");
        return ClothGeometry.Of(Question(yarn.WithDiameter(PeirceDiameter.Millimetres(yarn.LinearDensity.Value.Tex)), row.Text("weave"), row["sett"], row["sett"]));
    }

    private static ClothQuestion Question(Yarn yarn, string weave, double endsPerInch, double picksPerInch) =>
        ClothQuestion.About(yarn, yarn, Drawdown.Parse(weave).Value, Sett.FromPerInch(endsPerInch), Sett.FromPerInch(picksPerInch));
}
