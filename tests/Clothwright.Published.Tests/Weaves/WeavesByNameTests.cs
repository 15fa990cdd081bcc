using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Layers;
using Clothwright.Core.Weaves.Structures;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Weaves;

/// <summary>Tables/weaves-by-name.md.</summary>
public class WeavesByNameTests
{
    private static readonly MarkdownTable Table = MarkdownTable.Load("Tables/weaves-by-name.md");

    public static TheoryData<string> Ids => [.. Table.Rows.Select(r => r["id"])];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Words_give_the_draft_and_the_cloth_thread_by_thread(string id)
    {
        IReadOnlyDictionary<string, string> row = Table.Rows.Single(r => r["id"] == id);
        Weave weave = WeaveCatalogue.Make(row["words"]).Value;
        Drawdown cloth = weave.Draft.Drawdown();

        Assert.Equal(row["cloth"], cloth.ToString());
        Assert.Equal(row["draft"], DraftNotation.Format(weave.Draft));
    }

    [Fact]
    public void Deflected_double_weave_with_one_system_wholly_above_is_two_cloths()
    {
        Weave weave = DeflectedDoubleWeave.Of(4, firstWeftOver: false);
        Drawdown cloth = weave.Draft.Drawdown();

        // Two programs, computed: the second system (threads 5 to 8) lies over the first (1 to 4).
        Assert.Equal("10101111/01011111/10101111/01011111/00001010/00000101/00001010/00000101", cloth.ToString());
        Assert.Equal(2, weave.Layers);
        Assert.Equal([4, 5, 6, 7], ClothLayers.Of(cloth).Layers[0].Ends.ToArray());
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_weave_says_truly_how_many_cloths_it_is(string id)
    {
        IReadOnlyDictionary<string, string> row = Table.Rows.Single(r => r["id"] == id);
        Weave weave = WeaveCatalogue.Make(row["words"]).Value;
        Drawdown cloth = weave.Draft.Drawdown();

        Assert.Equal(row["layers"], $"{weave.Layers}");
        Assert.Equal(weave.Layers, ClothLayers.Of(cloth).Components.Length);
        Assert.Equal(row["floats"], string.Join(' ', ClothFloats.Of(cloth, ClothReading.Repeat).All.Select(f => f.LongestLength)));
    }
}
