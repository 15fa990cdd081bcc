using Clothwright.Core.Cloths.Geometry;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Cloths.Look.Distances;
using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Cloths.Look.Microcylinders;
using Clothwright.Core.Cloths.Look.Sections;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;

namespace Clothwright.Published.Tests.Cloths;

/// <summary>Sections, crimp, twist, distances and light on threads by the table.</summary>
public class ClothAppearanceTests
{
    private const string Table = "Tables/cloth-appearance.md";

    public static TheoryData<string> SectionRows() => Rows("R", row => row.TextOrNull("share") is not null);

    public static TheoryData<string> CrimpRows() => Rows("R", row => row.TextOrNull("crimp") is not null);

    public static TheoryData<string> TwistRows() => Rows("R", row => row.TextOrNull("turns") is not null);

    public static TheoryData<string> DistanceRows() => CheckRow.Ids(Table, "V");

    public static TheoryData<string> CylinderRows() => CheckRow.Ids(Table, "W");

    public static TheoryData<string> ReferenceRows() => CheckRow.Ids(Table, "K");

    public static TheoryData<string> PointRows() => CheckRow.Ids(Table, "H");

    [Theory]
    [MemberData(nameof(SectionRows))]
    public void A_pressed_thread_keeps_its_area(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        var section = ThreadSection.FromHeight(1, row["share"]);
        row.Check([section.Width, section.Width / section.Height]);
    }

    [Theory]
    [MemberData(nameof(CrimpRows))]
    public void Crimp_bends_a_thread_as_high_and_as_steep_as_published(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        var wave = CrimpWave.OfCrimp(row["crimp"], row["pitch"]);
        row.Check([wave.Height, wave.SteepestRadians * 180 / Math.PI]);
    }

    [Theory]
    [MemberData(nameof(TwistRows))]
    public void Twist_slants_the_fibres(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        row.Check([ThreadTwist.AngleRadians(row["diameter"] / 1000, row["turns"]) * 180 / Math.PI]);
    }

    [Theory]
    [MemberData(nameof(DistanceRows))]
    public void Threads_fuse_from_a_distance(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        var distance = FusingDistance.Of(Length.FromMetres(Length.MetresPerInch / row["perInch"]));
        row.Check([distance.Lightness.Metres, distance.Hue.Metres, distance.Checkerboard.Metres]);
    }

    [Theory]
    [MemberData(nameof(CylinderRows))]
    public void Cloth_of_fine_cylinders_shines_as_published(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        MicrocylinderCloth cloth = row.Text("cloth") switch
        {
            "shot" => MicrocylinderCloth.ShotSilk,
            "linen" => MicrocylinderCloth.PlainLinen,
            _ => MicrocylinderCloth.CrepeDeChine,
        };
        LinearColour light = cloth.At(Towards(row.Text("light")), Towards(row.Text("view")));
        row.Check([light.Red, light.Green, light.Blue]);
    }

    [Theory]
    [MemberData(nameof(ReferenceRows))]
    public void Body_light_under_a_ring_of_lamps_is_as_published(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        row.Check([BodyReference.Of(Fibre(row.Text("fibre")))]);
    }

    [Theory]
    [MemberData(nameof(PointRows))]
    public void A_point_of_a_thread_sends_light_as_published(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        ThreadLight light = ThreadShading.At(
            Fibre(row.Text("fibre")),
            row.Text("thread") == "warp" ? ThreadDirection.Warp : ThreadDirection.Weft,
            Towards(row.Text("light")),
            Towards(row.Text("view")),
            row["twist"],
            row["tilt"],
            row["across"]);
        row.Check([light.Body, light.Gloss]);
    }

    private static Lustre Fibre(string name) => name switch
    {
        "silk filament" => Lustres.SilkReeled,
        "spun silk" => Lustres.SilkSpun,
        "lyocell" => Lustres.Lyocell,
        "mercerised cotton" => Lustres.CottonMercerised,
        "cotton" => Lustres.Cotton,
        "fine wool" => Lustres.Wool,
        "linen" => Lustres.Linen,
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "The table names a fibre that is not known."),
    };

    private static Direction Towards(string text)
    {
        double[] parts = [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(p => double.Parse(p, System.Globalization.CultureInfo.InvariantCulture))];
        return Direction.Unit(parts[0], parts[1], parts[2]);
    }

    private static TheoryData<string> Rows(string prefix, Func<CheckRow, bool> which)
    {
        var data = new TheoryData<string>();
        foreach (string id in CheckRow.Ids(Table, prefix))
        {
            if (which(CheckRow.Load(Table, id))) data.Add(id);
        }

        return data;
    }
}
