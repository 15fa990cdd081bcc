using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;

namespace Clothwright.Published.Tests.Weaves;

public class WeaveStructureTests
{
    private const string Table = "weave-structures";

    public static TheoryData<string> Ids => WeaveTables.Ids(Table);

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_draft_weaves_the_drawdown(string id)
    {
        IReadOnlyDictionary<string, string> row = WeaveTables.Row(Table, id);

        Assert.Equal(row["drawdown"], DraftNotation.Parse(row["draft"]).Value.Drawdown().ToString());
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Its_longest_floats_are_as_counted(string id)
    {
        IReadOnlyDictionary<string, string> row = WeaveTables.Row(Table, id);
        ClothFloats floats = ClothAnalysis.Of(DraftNotation.Parse(row["draft"]).Value).Floats;

        Assert.Equal(row["floats"], string.Join(' ', floats.All.Select(t => t.LongestLength)));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void It_hangs_together_or_falls_into_its_layers(string id)
    {
        IReadOnlyDictionary<string, string> row = WeaveTables.Row(Table, id);
        ClothAnalysis cloth = ClothAnalysis.Of(DraftNotation.Parse(row["draft"]).Value);

        Assert.Equal(row["layers"] == "1", cloth.Layers.HangsTogether);
        Assert.Equal(row["layers"], $"{cloth.Layers.Layers.Length}");
        Assert.Equal(cloth.Layers.Layers.Length, cloth.Layers.Components.Length);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void It_needs_as_few_shafts_and_treadles(string id)
    {
        IReadOnlyDictionary<string, string> row = WeaveTables.Row(Table, id);
        Drawdown cloth = Drawdown.Parse(row["drawdown"]).Value;
        Draft fewest = FewestDraft.Of(cloth).Value;

        Assert.Equal(row["fewest"], $"{fewest.Shafts}/{fewest.Treadles}");
        Assert.Equal(cloth, fewest.Drawdown());
        Assert.Equal(row["fewest"], $"{ClothAnalysis.Of(cloth).FewestShafts}/{ClothAnalysis.Of(cloth).FewestTreadles}");
    }
}
