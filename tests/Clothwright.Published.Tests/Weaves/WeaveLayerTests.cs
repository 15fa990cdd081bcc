using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis.Layers;

namespace Clothwright.Published.Tests.Weaves;

public class WeaveLayerTests
{
    private const string Table = "weave-layers";

    public static TheoryData<string> Ids => WeaveTables.Ids(Table);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_small_cloth_falls_into_its_pieces(string id)
    {
        IReadOnlyDictionary<string, string> row = WeaveTables.Row(Table, id);
        ClothLayers layers = ClothLayers.Of(Drawdown.Parse(row["drawdown"]).Value);
        string[] found = [.. layers.Components.Select(c => c.ToString())];

        if (row["pieces"] == "one")
        {
            Assert.True(layers.HangsTogether);
            return;
        }

        string[] expected = row["pieces"].Split("; ");
        if (expected[^1] == "…")
        {
            Assert.True(found.Length >= expected.Length);
            Assert.Equal(expected[..^1], found[..(expected.Length - 1)]);
        }
        else
        {
            Assert.Equal(expected, found);
        }
    }
}
