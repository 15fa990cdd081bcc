using System.Text;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Tests.Drafts;
using Clothwright.Interchange.Wif;
using CsCheck;

namespace Clothwright.Interchange.Tests.Wif;

public sealed class WifRoundTripTests
{
    [Fact]
    public void A_draft_written_and_read_is_the_same_draft() => DraftGen.Woven.Sample(
        woven =>
        {
            byte[] file = WifWriter.WriteBytes(WifConversion.ToDocument(woven));
            WifReading reading = WifReader.Read(file).Value;
            WovenAssert.Same(woven, WifConversion.ToDraft(reading.Document).Value);
        },
        iter: 1_000);

    [Fact]
    public void Writing_what_was_read_is_stable_after_one_pass() => DraftGen.Woven.Sample(
        woven =>
        {
            string once = WifWriter.Write(WifConversion.ToDocument(woven));
            string twice = WifWriter.Write(WifReader.Read(Encoding.UTF8.GetBytes(once)).Value.Document);
            Assert.Equal(once, twice);
        },
        iter: 300);

    [Fact]
    public void A_file_of_our_own_is_read_with_no_warning_but_those_its_draft_deserves() => DraftGen.Woven.Sample(
        woven =>
        {
            WifReading reading = WifReader.Read(WifWriter.WriteBytes(WifConversion.ToDocument(woven))).Value;
            string[] deserved = ["those beyond", "The shed sinks", "do not agree", "The scale"];
            Assert.All(reading.Warnings, w => Assert.Contains(deserved, d => w.What.Contains(d, StringComparison.Ordinal)));
        },
        iter: 300);

    [Fact]
    public void Empty_picks_double_threaded_ends_and_a_sinking_shed_come_through()
    {
        var draft = new Draft
        {
            Shafts = 3,
            RisingShed = false,
            Threading = [ShaftSet.Of(1, 3), ShaftSet.None, ShaftSet.Of(2)],
            TieUp = [ShaftSet.Of(1, 2), ShaftSet.None],
            Treadling = [ShaftSet.None, ShaftSet.Of(1, 2), ShaftSet.None],
        };
        Draft read = WifConversion.ToDraft(WifReader.Read(WifWriter.WriteBytes(WifConversion.ToDocument(WovenDraft.Of(draft)))).Value.Document).Value.Draft;
        WovenAssert.Same(WovenDraft.Of(draft), WovenDraft.Of(read));
        Assert.Equal("111/010/111", read.Drawdown().ToString());
    }

    [Fact]
    public void Every_part_of_the_standard_comes_through()
    {
        string text = WifFull.Text.ReplaceLineEndings("\r\n");
        WifReading reading = WifReader.Read(Encoding.UTF8.GetBytes(text)).Value;
        Assert.Equal(["[STRANGE THING]: The standard does not know this section; it is kept word for word."], reading.Warnings.Select(w => w.ToString()[(w.ToString().IndexOf('[', StringComparison.Ordinal))..]));
        Assert.Equal(text, WifWriter.Write(reading.Document));
    }
}
