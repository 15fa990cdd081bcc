using Clothwright.Core.Cloths.Faces;
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
