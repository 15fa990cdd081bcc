using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
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
