using System.Xml.Linq;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Drawing.Drafts;

namespace Clothwright.Drawing.Tests.Drafts.Marks;

public class ClothMarksInkTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Floats_on_the_face_are_lines_and_on_the_back_dashes()
    {
        XDocument svg = Marked(WeaveCatalogue.Make("8-end satin step 3").Value.Draft, 7);

        // Each of eight ends floats over seven picks on the face, each pick under seven ends on the back, round the edge of the repeat.
        Assert.Null(Path(svg, "float-warp-face").Attribute("stroke-dasharray"));
        Assert.NotNull(Path(svg, "float-weft-back").Attribute("stroke-dasharray"));
        Assert.Contains(Keys(svg), k => k == "warp float over 7 threads or more, on the face: 8, the longest 7");
        Assert.Contains(Keys(svg), k => k == "weft float over 7 threads or more, on the back: 8, the longest 7");
    }

    [Fact]
    public void A_thread_that_nothing_holds_is_framed_and_named()
    {
        XDocument svg = Marked(FewestDraft.Of(Drawdown.Parse("101010/010000/101010/000000/110110/010101").Value).Value, 3);

        Assert.Single(svg.Descendants(Svg + "path"), p => (string?)p.Attribute("class") == "loose-pick");
        Assert.Contains("nothing holds this thread: pick 4", Keys(svg));
    }

    [Fact]
    public void Layers_have_letters_from_the_top()
    {
        XDocument svg = Marked(WeaveCatalogue.Make("double width", new WeaveSize(8, 4)).Value.Draft, 5);

        Assert.Equal(8, Texts(svg, "layer-of-end").Count);
        Assert.Equal(["A", "B", "B", "A"], ByPick(svg));
        Assert.Contains(Keys(svg), k => k.StartsWith("layer, from the top: 2", StringComparison.Ordinal));
    }

    [Fact]
    public void A_missed_turn_points_at_its_edge_beside_its_pick()
    {
        XDocument svg = Marked(WeaveCatalogue.Make("2/2 twill", new WeaveSize(8, 4)).Value.Draft, 5);

        // From the left, 2/2 twill misses the right edge after picks 1 and 3, the left after 2 and 4.
        Assert.Equal(4, ((string?)Path(svg, "missed-turn").Attribute("d"))!.Count(c => c == 'M'));
        Assert.Contains("shuttle started from the left misses the right edge end after picks 1 3", Keys(svg));
        Assert.Contains("shuttle started from the left misses the left edge end after picks 2 4", Keys(svg));
    }

    [Fact]
    public void Where_nothing_is_wrong_the_key_says_so() =>
        Assert.StartsWith("Nothing to mark", Assert.Single(Keys(Marked(WeaveCatalogue.Make("plain", new WeaveSize(6, 6)).Value.Draft, 5))), StringComparison.Ordinal);

    [Fact]
    public void Marks_are_drawn_as_pixels_too()
    {
        Draft draft = WeaveCatalogue.Make("8-end satin step 3").Value.Draft;
        using var plain = new MemoryStream();
        using var marked = new MemoryStream();
        DraftPng.Write(draft, plain);
        DraftPng.Write(draft, marked, style: new DraftStyle { Marks = ClothMarks.Of(ClothAnalysis.Of(draft)) });

        Assert.True(marked.Length > plain.Length);
    }

    [Fact]
    public void Clasped_areas_are_coloured_where_the_clasped_thread_is_on_top()
    {
        Weave weave = WeaveCatalogue.Make("clasped weft line 50", new WeaveSize(8, 4)).Value;
        XDocument svg = XDocument.Parse(DraftSvg.ToString(weave.Draft, style: new DraftStyle { Areas = weave.Areas }));

        // Half the crossings of plain weave show the weft; half of those each yarn.
        Assert.Equal([8, 8], svg.Descendants(Svg + "path").Where(p => (string?)p.Attribute("class") == "weft").Select(p => ((string?)p.Attribute("d"))!.Count(c => c == 'M')));
        Assert.Equal(16, ((string?)Path(svg, "warp").Attribute("d"))!.Count(c => c == 'M'));
    }

    private static XDocument Marked(Draft draft, int longFloat) =>
        XDocument.Parse(DraftSvg.ToString(draft, style: new DraftStyle { Marks = ClothMarks.Of(ClothAnalysis.Of(draft), longFloat) }));

    private static XElement Path(XDocument svg, string name) => svg.Descendants(Svg + "path").Single(p => (string?)p.Attribute("class") == name);

    private static List<string> Keys(XDocument svg) => Texts(svg, "key");

    private static List<string> Texts(XDocument svg, string name) => [.. svg.Descendants(Svg + "text").Where(t => (string?)t.Attribute("class") == name).Select(t => t.Value)];

    // First pick at the bottom, so lowest first.
    private static IEnumerable<string> ByPick(XDocument svg) => svg.Descendants(Svg + "text")
        .Where(t => (string?)t.Attribute("class") == "layer-of-pick")
        .OrderByDescending(t => double.Parse((string)t.Attribute("y")!, System.Globalization.CultureInfo.InvariantCulture))
        .Select(t => t.Value);
}
