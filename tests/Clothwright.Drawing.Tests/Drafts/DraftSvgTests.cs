using System.Xml.Linq;
using Clothwright.Core.Weaves;
using Clothwright.Drawing.Drafts;

namespace Clothwright.Drawing.Tests.Drafts;

public class DraftSvgTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Every_crossing_is_drawn_once_as_warp_or_as_weft()
    {
        Draft twill = Pictures.Twill(10, 7);
        XDocument svg = XDocument.Parse(DraftSvg.ToString(twill));

        Drawdown cloth = twill.Drawdown();
        int warp = Enumerable.Range(0, 7).Sum(p => Enumerable.Range(0, 10).Count(e => cloth[p, e]));
        Assert.Equal(warp, Cells(svg, "warp"));
        Assert.Equal(70 - warp, Cells(svg, "weft"));
    }

    [Fact]
    public void Each_end_shows_its_shaft_and_each_pick_its_treadle()
    {
        XDocument svg = XDocument.Parse(DraftSvg.ToString(Pictures.Twill(10, 7)));

        Assert.Equal(["1", "2", "3", "4", "1", "2", "3", "4", "1", "2"], Texts(svg, "threading"));
        Assert.Equal(["1", "2", "3", "4", "1", "2", "3"], Texts(svg, "treadling"));
        Assert.Equal(8, Texts(svg, "tie-up").Count);
    }

    [Fact]
    public void A_lift_plan_stands_where_the_treadling_would()
    {
        Draft twill = Pictures.Twill(8, 4);
        Draft lifted = twill with { TieUp = [], Treadling = [], LiftPlan = twill.TieUp };
        XDocument svg = XDocument.Parse(DraftSvg.ToString(lifted));

        Assert.Equal(["1", "2", "2", "3", "3", "4", "1", "4"], Texts(svg, "lift"));
        Assert.Empty(Texts(svg, "tie-up"));
        Assert.Empty(Texts(svg, "treadling"));
    }

    [Fact]
    public void Marks_fill_cells_instead_of_numbering_them()
    {
        XDocument svg = XDocument.Parse(DraftSvg.ToString(Pictures.Twill(10, 7), style: new DraftStyle { Notation = CellNotation.Marks }));

        Assert.Empty(Texts(svg, "threading"));
        Assert.Equal(10, Cells(svg, "threading"));
    }

    [Fact]
    public void A_long_threading_is_bracketed_with_the_number_of_repeats()
    {
        XDocument svg = XDocument.Parse(DraftSvg.ToString(Pictures.Twill(184, 1200)));

        Assert.Contains("4 ends × 46", Texts(svg, "repeat"));
        Assert.Contains("4 picks × 300", Texts(svg, "repeat"));
        Assert.True(Texts(svg, "threading").Count < 40, "repeats are drawn, though they are bracketed");
    }

    [Fact]
    public void Numbers_of_neighbouring_ends_do_not_run_into_each_other()
    {
        Draft cut = Pictures.Twill(423, 8) with { Threading = [ShaftSet.None, .. Pictures.Straight(6, 421), ShaftSet.None], Shafts = 6 };
        List<(string Text, double X, double Y)> numbers = Labels(XDocument.Parse(DraftSvg.ToString(cut)), "end-number");

        Assert.Contains(numbers, n => n.Text == "422");
        Assert.DoesNotContain(numbers, n => n.Text == "423");
        Assert.All(numbers.Zip(numbers.Skip(1)), n => Assert.True(n.Second.X - n.First.X > 10, $"{n.First.Text} and {n.Second.Text}"));
    }

    [Fact]
    public void Without_brackets_every_end_is_drawn()
    {
        XDocument svg = XDocument.Parse(DraftSvg.ToString(Pictures.Twill(184, 8), style: new DraftStyle { BracketRepeats = false }));

        Assert.Equal(184, Texts(svg, "threading").Count);
    }

    [Fact]
    public void Heddles_are_counted_over_all_ends_drawn_or_not()
    {
        XDocument svg = XDocument.Parse(DraftSvg.ToString(Pictures.Twill(182, 8)));

        Assert.Equal(["1 (46)", "2 (46)", "3 (45)", "4 (45)"], Texts(svg, "shaft-name"));
    }

    [Theory]
    [InlineData(DraftOrientation.AtTheLoom, true, true, true, true)]
    [InlineData(DraftOrientation.TieUpUpperRight, true, true, false, false)]
    [InlineData(DraftOrientation.TieUpUpperLeft, true, false, true, false)]
    [InlineData(DraftOrientation.TieUpLowerRight, false, true, false, true)]
    [InlineData(DraftOrientation.TieUpLowerLeft, false, false, true, true)]
    public void Each_orientation_puts_its_parts_where_books_have_them(
        DraftOrientation orientation, bool threadingAbove, bool tieUpRight, bool endOneLeft, bool firstPickBottom)
    {
        XDocument svg = XDocument.Parse(DraftSvg.ToString(Pictures.Twill(12, 9), style: new DraftStyle { Orientation = orientation }));
        (double X, double Y) threading = Middle(svg, "threading");
        (double X, double Y) tieUp = Middle(svg, "tie-up");
        (double X, double Y) treadling = Middle(svg, "treadling");
        List<(string Text, double X, double Y)> ends = Labels(svg, "end-number");
        List<(string Text, double X, double Y)> picks = Labels(svg, "pick-number");

        Assert.Equal(threadingAbove, threading.Y < treadling.Y);
        Assert.Equal(tieUpRight, tieUp.X > threading.X);
        Assert.Equal(threading.Y, tieUp.Y, 0);
        Assert.Equal(endOneLeft, ends.Single(e => e.Text == "1").X < ends.Single(e => e.Text == "12").X);
        Assert.Equal(firstPickBottom, picks.Single(p => p.Text == "1").Y > picks.Single(p => p.Text == "9").Y);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("a & b \"c\" 'd'")]
    [InlineData("tide\u202Eevael\u0000\u0007 line\nbreak")]
    public void A_name_with_markup_or_controls_stays_text(string name)
    {
        XDocument svg = XDocument.Parse(DraftSvg.ToString(Pictures.Twill(4, 4) with { Name = name }));

        Assert.DoesNotContain(svg.Descendants(), e => e.Name.LocalName == "script");
        string title = svg.Descendants(Svg + "title").Single().Value;
        Assert.DoesNotContain('\u202E', title);
        Assert.StartsWith(name.Split('\u202E')[0], title, StringComparison.Ordinal);
    }

    [Fact]
    public void Colours_of_ends_and_picks_stand_beside_the_draft()
    {
        var colours = new DraftColours([Pictures.TideBlue, Pictures.DrySand], [Pictures.Saltmarsh]);
        XDocument svg = XDocument.Parse(DraftSvg.ToString(Pictures.Twill(10, 7), colours));

        Assert.Equal(10, Cells(svg, "end-colour"));
        Assert.Equal(7, Cells(svg, "pick-colour"));
        Assert.Equal([Pictures.TideBlue.ToString(), Pictures.DrySand.ToString()], Paths(svg, "end-colour").Select(p => p.Attribute("fill")!.Value));
    }

    [Fact]
    public void Colours_that_repeat_too_slowly_are_left_to_the_winding_order()
    {
        var colours = new DraftColours([.. Enumerable.Range(0, 200).Select(i => i < 150 ? Pictures.TideBlue : Pictures.DrySand)], []);
        XDocument svg = XDocument.Parse(DraftSvg.ToString(Pictures.Twill(200, 8), colours));
        XDocument inThreads = XDocument.Parse(DraftSvg.ToString(Pictures.Twill(200, 8), colours with { Picks = [Pictures.Saltmarsh] }, new DraftStyle { Ink = DrawdownInk.Threads }));

        Assert.Contains("4 ends × 50", Texts(svg, "repeat"));
        Assert.Equal(0, Cells(svg, "end-colour"));
        Assert.Contains("4 ends × 37", Texts(inThreads, "repeat"));
        Assert.True(Cells(inThreads, "end-colour") > 0);
    }

    [Fact]
    public void In_threads_each_crossing_has_the_colour_of_the_thread_on_top()
    {
        Draft twill = Pictures.Twill(8, 8);
        var colours = new DraftColours([Pictures.TideBlue], [Pictures.Saltmarsh]);
        XDocument svg = XDocument.Parse(DraftSvg.ToString(twill, colours, new DraftStyle { Ink = DrawdownInk.Threads }));

        Assert.Equal(Pictures.TideBlue.ToString(), Paths(svg, "warp").Single().Attribute("fill")!.Value);
        Assert.Equal(Pictures.Saltmarsh.ToString(), Paths(svg, "weft").Single().Attribute("fill")!.Value);
        Assert.Equal(32, Cells(svg, "warp"));
    }

    [Fact]
    public void A_draft_without_ends_is_refused()
    {
        Assert.Throws<ArgumentException>(() => DraftSvg.ToString(Pictures.Twill(0, 4)));
    }

    private static IEnumerable<XElement> Paths(XDocument svg, string name) =>
        svg.Descendants(Svg + "path").Where(p => p.Attribute("class")?.Value == name);

    private static int Cells(XDocument svg, string name) => Paths(svg, name).Sum(p => p.Attribute("d")!.Value.Count(c => c == 'M'));

    private static List<string> Texts(XDocument svg, string name) => [.. Labels(svg, name).Select(l => l.Text)];

    private static List<(string Text, double X, double Y)> Labels(XDocument svg, string name) =>
    [
        .. svg.Descendants(Svg + "text").Where(t => t.Attribute("class")?.Value == name)
            .Select(t => (t.Value, (double)t.Attribute("x")!, (double)t.Attribute("y")!)),
    ];

    private static (double X, double Y) Middle(XDocument svg, string name)
    {
        List<(string Text, double X, double Y)> labels = Labels(svg, name);
        return ((labels.Min(l => l.X) + labels.Max(l => l.X)) / 2, (labels.Min(l => l.Y) + labels.Max(l => l.Y)) / 2);
    }
}
