using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Weaves;

/// <summary>Tables/colour-and-weave.md.</summary>
public class ColourAndWeaveTests
{
    private static readonly MarkdownTable Table = MarkdownTable.Load("Tables/colour-and-weave.md");

    public static TheoryData<string> Ids => [.. Table.Rows.Select(r => r["id"])];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Colours_show_as_published(string id)
    {
        IReadOnlyDictionary<string, string> row = Table.Rows.Single(r => r["id"] == id);
        string[] face = row["face"].Split('/');
        var size = new WeaveSize(face[0].Length, face.Length);
        Draft draft = ColourAndWeave.Of(
            id, WeaveCatalogue.Make(row["words"]).Value, ThreadOrder.Parse(row["order of ends"]).Value, ThreadOrder.Parse(row["order of picks"]).Value).Sized(size).Draft;

        Assert.Equal(row["face"], Seen(draft, ColourAndWeave.OnFace));
        if (row["back"] != "–") Assert.Equal(row["back"], Seen(draft, ColourAndWeave.OnBack));
    }

    [Theory]
    [InlineData("dogtooth", "dogtooth")]
    [InlineData("log cabin", "logcabin")]
    public void Named_effects_bring_their_colours(string words, string id)
    {
        string face = Table.Rows.Single(r => r["id"] == id)["face"];

        Assert.Equal(face, Seen(WeaveCatalogue.Make(words).Value.Draft, ColourAndWeave.OnFace));
    }

    [Fact]
    public void Half_of_the_dogtooth_is_dark() =>
        // 32 of 64 (two programs, computed).
        Assert.Equal(32, Seen(WeaveCatalogue.Make("dogtooth").Value.Draft, ColourAndWeave.OnFace).Count(c => c == 'D'));

    private static string Seen(Draft draft, Func<Draft, Drawdown, int, int, int> yarn)
    {
        Drawdown cloth = draft.Drawdown();
        return string.Join('/', Enumerable.Range(0, cloth.Picks).Select(p =>
            string.Concat(Enumerable.Range(0, cloth.Ends).Select(e => yarn(draft, cloth, p, e) == 0 ? 'D' : 'L'))));
    }
}
