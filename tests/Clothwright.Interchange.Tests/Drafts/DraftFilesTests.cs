using System.Text;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Tests.Wif;
using CsCheck;

namespace Clothwright.Interchange.Tests.Drafts;

public sealed class DraftFilesTests
{
    [Theory]
    [InlineData(WifSample.Twill, DraftFileForm.Wif)]
    [InlineData("; a note first\n\n[WEAVING]", DraftFileForm.Wif)]
    [InlineData("1100\n0110", DraftFileForm.TextGrid)]
    [InlineData("; first pick last\n##..", DraftFileForm.TextGrid)]
    [InlineData("part,number,value\n", DraftFileForm.Table)]
    [InlineData("\"Part\";number;value\n", DraftFileForm.Table)]
    [InlineData("\uFEFFpart\tnumber\tvalue\n", DraftFileForm.Table)]
    public void A_file_is_known_by_what_it_holds(string text, DraftFileForm form) =>
        Assert.Equal(form, DraftFiles.FormOf(Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void A_picture_is_known_and_left_to_the_drawing_part()
    {
        byte[] file = [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10];
        Assert.Equal(DraftFileForm.Picture, DraftFiles.FormOf(file));
        Assert.Contains("picture", DraftFiles.Read(file, "marsh.png").Problem!.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_draft_goes_from_any_form_to_any_other()
    {
        WovenDraft woven = WifSample.Draft(WifSample.Twill);
        foreach (string from in (string[])["a.wif", "a.txt", "a.csv"])
        {
            WovenDraft first = DraftFiles.Read(DraftFiles.Write(woven, from).Value, from).Value.Woven;
            foreach (string to in (string[])["b.WIF", "b.txt", "b.csv"])
            {
                WovenDraft second = DraftFiles.Read(DraftFiles.Write(first, to).Value, to).Value.Woven;
                Assert.Equal(WifSample.TwillDrawdown, second.Draft.Drawdown().ToString());
            }
        }
    }

    [Fact]
    public void A_drawdown_alone_becomes_the_draft_with_the_fewest_shafts()
    {
        Draft draft = DraftFiles.Read("1100\n1100\n0011\n0011"u8, "basket.txt").Value.Woven.Draft;
        Assert.Equal((2, 2), (draft.Shafts, draft.Treadles));
        Assert.Equal("1100/1100/0011/0011", draft.Drawdown().ToString());
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("11\n1", "crosses 1 ends")]
    [InlineData("[WIF]\nVersion=1.1\n", "no threading")]
    [InlineData("[THREADING]\n1=1\n", "neither treadling nor lift plan")]
    public void The_name_of_the_file_stands_before_the_place(string text, string what)
    {
        InputProblem problem = DraftFiles.Read(Encoding.UTF8.GetBytes(text), "marsh").Problem!;
        Assert.StartsWith("marsh", problem.Where, StringComparison.Ordinal);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Warnings_are_told_with_their_place()
    {
        DraftFileReading reading = DraftFiles.Read(Encoding.UTF8.GetBytes(WifSample.Replaced("Shafts=4", "Shafts=2")), "a.wif").Value;
        Assert.Equal("line 40, [TIEUP] 2: The file declares 2 shafts, but shaft 4 is used; 4 are taken.", Assert.Single(reading.Warnings));
    }

    [Fact]
    public void An_ending_that_stands_for_nothing_is_refused()
    {
        InputProblem problem = DraftFiles.Write(WifSample.Draft(WifSample.Twill), "marsh.doc").Problem!;
        Assert.Contains("\".doc\"", problem.What, StringComparison.Ordinal);
    }
}
