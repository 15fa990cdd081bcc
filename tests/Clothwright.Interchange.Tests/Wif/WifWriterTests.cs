using System.Text;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Wif;

namespace Clothwright.Interchange.Tests.Wif;

public sealed class WifWriterTests
{
    private static readonly WifDocument Twill = WifSample.Read(WifSample.Twill).Document;

    [Fact]
    public void Lines_end_in_carriage_return_and_line_feed_and_there_is_no_mark()
    {
        byte[] file = WifWriter.WriteBytes(Twill with { Text = new WifText { Title = "Möwe" } });
        Assert.Equal((byte)'[', file[0]);
        string text = Encoding.UTF8.GetString(file);
        Assert.Contains("Title=Möwe\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
    }

    [Fact]
    public void Only_threads_unlike_the_default_are_listed()
    {
        WovenDraft woven = WifSample.Draft(WifSample.With("WARP COLORS", "3=2"));
        string text = WifWriter.Write(WifConversion.ToDocument(woven));
        Assert.Contains("[WARP COLORS]\r\n3=2\r\n\r\n", text + "\r\n", StringComparison.Ordinal);
        Assert.DoesNotContain("WEFT COLORS", text, StringComparison.Ordinal);
        Assert.DoesNotContain("WARP SPACING", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_title_of_several_lines_is_written_as_one()
    {
        string text = WifWriter.Write(Twill with { Text = new WifText { Title = "ebb\r\nThreads=9" } });
        Assert.Contains("Title=ebb  Threads=9\r\n", text, StringComparison.Ordinal);
    }

    public static TheoryData<string, WifDocument> Unsound => new()
    {
        { "THREADING goes to 5", Twill with { Threading = Lines(5, 1) } },
        { "THREADING 1 holds 9", Twill with { Threading = Lines(1, 9) } },
        { "Shafts is 65", Twill with { Shafts = 65 } },
        { "WARP describes thread 7", Twill with { Warp = Twill.Warp with { Spacings = WifNumbered.Of([KeyValuePair.Create(7, 1.0)]) } } },
        { "cannot be written as a key", Twill with { ExtraKeys = [new WifExtraKey("WARP", "a=b", "")] } },
        { "cannot be written as a key", Twill with { ExtraKeys = [new WifExtraKey("MARSH", "a", "")] } },
        { "cannot be the name", Twill with { KeptSections = [new WifSection("WARP", [])] } },
        { "cannot be the name", Twill with { KeptSections = [new WifSection("a]b", [])] } },
        { "another section", Twill with { KeptSections = [new WifSection("PRIVATE A", ["[WARP]"])] } },
        { "same name", Twill with { KeptSections = [new WifSection("PRIVATE A", []), new WifSection("private a", [])] } },
    };

    [Theory]
    [MemberData(nameof(Unsound), DisableDiscoveryEnumeration = true)]
    public void A_document_that_could_not_be_read_back_is_not_written(string fault, WifDocument document)
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => WifWriter.Write(document));
        Assert.Contains(fault, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_draft_whose_lists_do_not_fit_it_is_not_converted()
    {
        WovenDraft woven = WifSample.Draft(WifSample.Twill);
        Assert.Throws<ArgumentException>(() => WifConversion.ToDocument(woven with { Weft = woven.Weft with { Colours = [default] } }));
        ArgumentException uneven = Assert.Throws<ArgumentException>(() => WifConversion.ToDocument(woven with { Draft = woven.Draft with { LiftPlan = [ShaftSet.None] } }));
        Assert.Contains("The lift plan has 1 picks and the treadling 4.", uneven.Message, StringComparison.Ordinal);
    }

    private static WifNumbered<ShaftSet> Lines(int number, int shaft) => WifNumbered.Of([KeyValuePair.Create(number, ShaftSet.Of(shaft))]);
}
