using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Cloths.Look.Tilts;
using Clothwright.Core.Colours;
using Clothwright.Core.Weaves;

namespace Clothwright.Published.Tests.Cloths;

/// <summary>Visible shares and fused colours by the table.</summary>
public class VisibleSharesTableTests
{
    private const string Table = "Tables/visible-shares.md";

    public static TheoryData<string> ShareRows() => CheckRow.Ids(Table, "A");

    public static TheoryData<string> ColourRows() => CheckRow.Ids(Table, "M");

    [Theory]
    [MemberData(nameof(ShareRows))]
    public void Warp_weft_and_hole_show_as_published(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        VisibleShares shares = VisibleShares.Of(row["f"], row["k1"], row["k2"]);
        row.Check([shares.Warp, shares.Weft, shares.Gap]);
    }

    public static TheoryData<string> TiltRows() => CheckRow.Ids(Table, "X");

    [Theory]
    [MemberData(nameof(TiltRows))]
    public void A_tilted_cloth_shows_as_published(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        Drawdown weave = Drawdown.Parse(row.Text("weave")).Value;
        // One pitch wide; a section of equal area, its height a share of the diameter (Kemp's race-track).
        double height = row["height"];
        double width = row["k"];
        double diameter = width / (height + Math.PI / 4 * (1 - height * height) / height);
        double thick = diameter * height;
        double warpRise = 2 * thick * row["warp"];
        var section = new TiltedSection(1, 1, width, width, thick, thick, warpRise, 2 * thick - warpRise);
        double slope = Math.Tan(row["tilt"] * Math.PI / 180);
        bool alongWarp = row.Text("plane") == "warp";
        TiltedShares seen = TiltedShares.Of(section, weave.Ends, weave.Picks, (c, r) => weave[r, c] ? 1 : 0, alongWarp ? 0 : slope, alongWarp ? slope : 0);
        row.Check([seen.WarpShare, seen.WeftShare, 1 - seen.WarpShare - seen.WeftShare]);
    }

    [Theory]
    [MemberData(nameof(ColourRows))]
    public void Threads_fuse_to_the_published_colour(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        LinearColour[] wefts = [.. row.Text("weft").Split(',').Select(Light)];
        LinearColour warp = Light(row.Text("warp"));
        LinearColour? behind = row.TextOrNull("behind") is { } paper ? Light(paper) : null;
        double k1 = row.TextOrNull("k1") is null ? 1 : row["k1"];
        double k2 = row.TextOrNull("k2") is null ? 1 : row["k2"];
        FusedColours fused = FusedColours.Of(Drawdown.Parse(row.Text("weave")).Value, _ => warp, pick => wefts[pick % wefts.Length], k1, k2, behind);
        Assert.Equal(row.Expected[0], fused.Face.Colour.ToSrgb().ToString());
    }

    private static LinearColour Light(string colour) => LinearColour.From(SrgbColour.Parse(colour).Value);
}
