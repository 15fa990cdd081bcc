using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Wif;

namespace Clothwright.Interchange.Tests.Wif;

/// <summary>Awkward files, numbered as in the list of the rulings: lists of sections, threadings, treadlings, plans.</summary>
public sealed class WifAwkwardTests
{
    [Fact]
    public void Case_01_A_file_without_a_list_of_sections_is_read_with_a_warning()
    {
        string text = WifSample.With("CONTENTS", null);
        WifSample.AssertWarns(WifSample.Read(text), "CONTENTS", "", "no list of its sections");
        Assert.Equal(WifSample.TwillDrawdown, WifSample.Drawdown(text));
    }

    [Fact]
    public void Case_02_A_section_listed_as_absent_is_read_all_the_same()
    {
        string text = WifSample.Replaced("THREADING=true", "THREADING=0");
        WifReading reading = WifSample.Read(text);
        WifSample.AssertWarns(reading, "CONTENTS", "THREADING", "listed as absent");
        Assert.Equal(12, Assert.Single(reading.Warnings).Line);
        Assert.Equal(WifSample.TwillDrawdown, WifSample.Drawdown(text));
    }

    [Fact]
    public void Case_02_A_promised_section_that_is_missing_is_named()
    {
        WifReading reading = WifSample.Read(WifSample.Replaced("TREADLING=true", "TREADLING=true\nNOTES=yes\nTEXT=false"));
        WifSample.AssertWarns(reading, "CONTENTS", "NOTES", "promised");
        Assert.Single(reading.Warnings);
    }

    [Fact]
    public void Case_02_A_section_that_is_not_listed_is_read_and_named()
    {
        WifReading reading = WifSample.Read(WifSample.Replaced("TIEUP=true\n", "").ReplaceLineEndings("\n"));
        WifSample.AssertWarns(reading, "CONTENTS", "TIEUP", "not listed");
        Assert.Equal(4, reading.Document.TieUp!.Count);
    }

    [Fact]
    public void Case_03_Small_letters_and_leading_noughts_mean_the_same()
    {
        string text = WifSample.With("THREADING", "001=1\n2=2\n03=3\n0004=4").Replace("[THREADING]", "[ threading ]", StringComparison.Ordinal).Replace("Shafts=4", "sHAFTS = 4", StringComparison.Ordinal);
        Assert.Empty(WifSample.Read(text).Warnings);
        Assert.Equal(WifSample.TwillDrawdown, WifSample.Drawdown(text));
    }

    [Fact]
    public void Case_04_An_end_without_a_line_and_an_end_on_shaft_nought_are_on_no_shaft()
    {
        string text = WifSample.With("THREADING", "1=1\n3=0\n4=4");
        Assert.Empty(WifSample.Read(text).Warnings);
        Assert.Equal("1000/0000/0001/1001", WifSample.Drawdown(text));
    }

    [Fact]
    public void Case_05_An_end_may_be_on_three_shafts()
    {
        string text = WifSample.With("THREADING", "1=1\n2=2\n3=1, 3 ,4\n4=4");
        Assert.Equal(ShaftSet.Of(1, 3, 4), WifSample.Draft(text).Draft.Threading[2]);
        Assert.Equal("1110/0110/0011/1011", WifSample.Drawdown(text));
    }

    [Fact]
    public void Case_06_A_pick_may_press_four_treadles()
    {
        string text = WifSample.With("TREADLING", "1=1\n2=2\n3=3\n4=1,2,3,4");
        Assert.Equal("1100/0110/0011/1111", WifSample.Drawdown(text));
    }

    [Fact]
    public void Case_07_A_treadling_longer_than_the_weft_is_read_to_its_end()
    {
        string text = WifSample.With("TREADLING", "1=1\n2=2\n3=3\n4=4\n5=1\n6=2");
        WifReading reading = WifSample.Read(text);
        WifSample.AssertWarns(reading, "TREADLING", "5", "declares 4 picks, but pick 6 is used");
        Assert.Equal(6, reading.Document.Weft.Count);
        Assert.Equal(WifSample.TwillDrawdown + "/1100/0110", WifSample.Drawdown(text));
    }

    [Fact]
    public void Case_08_A_warp_larger_than_its_threading_has_ends_on_no_shaft()
    {
        string text = WifSample.With("WARP", "Threads=6");
        WifReading reading = WifSample.Read(text);
        WifSample.AssertWarns(reading, "THREADING", "", "6 ends are declared and the threading stops at end 4");
        Assert.Equal("110000/011000/001100/100100", WifSample.Drawdown(text));
    }

    [Fact]
    public void Case_09_Shafts_used_but_not_declared_are_counted()
    {
        string text = WifSample.Replaced("Shafts=4", "Shafts=0");
        WifReading reading = WifSample.Read(text);
        WifSample.AssertWarns(reading, "TIEUP", "1", "declares 0 shafts, but shaft 4 is used");
        Assert.Equal(4, reading.Document.Shafts);
        Assert.Equal(WifSample.TwillDrawdown, WifSample.Drawdown(text));
    }

    [Fact]
    public void Case_10_A_lift_plan_needs_no_treadles()
    {
        string text = WifSample.With("TIEUP", null);
        text = text[..text.IndexOf("[TREADLING]", StringComparison.Ordinal)].Replace("Treadles=4\n", "", StringComparison.Ordinal)
            + "[LIFTPLAN]\n1=1,2\n2=2,3\n3=3,4\n4=1,4\n";
        Draft draft = WifSample.Draft(text).Draft;
        Assert.Equal(0, draft.Treadles);
        Assert.Equal(WifSample.TwillDrawdown, draft.Drawdown().ToString());
    }

    [Fact]
    public void Case_11_A_tie_up_with_a_lift_plan_and_no_treadling_keeps_both()
    {
        string text = WifSample.With("TREADLING", null) + "[LIFTPLAN]\n1=1\n2=2\n3=3\n4=4\n";
        Draft draft = WifSample.Draft(text).Draft;
        Assert.Equal(4, draft.Treadles);
        Assert.Empty(draft.Treadling);
        Assert.Equal("1000/0100/0010/0001", draft.Drawdown().ToString());
    }

    [Fact]
    public void Case_12_Two_plans_that_agree_bring_no_warning()
    {
        string text = WifSample.With("LIFTPLAN", "1=1,2\n2=2,3\n3=3,4\n4=1,4").Replace("TREADLING=true", "TREADLING=true\nLIFTPLAN=true", StringComparison.Ordinal);
        Assert.Empty(WifSample.Read(text).Warnings);
        Assert.Equal(WifSample.TwillDrawdown, WifSample.Drawdown(text));
    }

    [Fact]
    public void Case_13_Where_two_plans_differ_the_pick_is_named_and_the_lift_plan_used()
    {
        string text = WifSample.With("LIFTPLAN", "1=1,2\n2=2,3\n3=1\n4=1,4");
        WifSample.AssertWarns(WifSample.Read(text), "LIFTPLAN", "", "do not agree at picks 3; the lift plan is used");
        Assert.Equal("1100/0110/1000/1001", WifSample.Drawdown(text));
    }

    [Fact]
    public void Case_14_A_shed_of_which_nothing_is_said_rises()
    {
        string text = WifSample.Replaced("Rising Shed=true\n", "");
        WifSample.AssertWarns(WifSample.Read(text), "WEAVING", "Rising Shed", "a rising shed is assumed");
        Assert.Equal(WifSample.TwillDrawdown, WifSample.Drawdown(text));
    }

    [Fact]
    public void Case_14_A_sinking_shed_turns_the_cloth_over()
    {
        string text = WifSample.Replaced("Rising Shed=true", "Rising Shed=FALSE");
        Assert.Empty(WifSample.Read(text).Warnings);
        Assert.Equal("0011/1001/1100/0110", WifSample.Drawdown(text));
    }

    [Fact]
    public void Case_14_A_sinking_shed_with_a_lift_plan_is_doubted_aloud()
    {
        string text = WifSample.With("LIFTPLAN", "1=1,2\n2=2,3\n3=3,4\n4=1,4").Replace("Rising Shed=true", "Rising Shed=no", StringComparison.Ordinal);
        WifSample.AssertWarns(WifSample.Read(text), "LIFTPLAN", "", "taken to go down");
        Assert.Equal("0011/1001/1100/0110", WifSample.Drawdown(text));
    }

    [Theory]
    [InlineData("-4", "is not a count of ends")]
    [InlineData("12.5", "is not a count of ends")]
    [InlineData("many", "is not a count of ends")]
    [InlineData("", "is not a count of ends")]
    public void Case_25_A_count_that_is_none_is_taken_from_the_threading(string count, string words)
    {
        string text = WifSample.With("WARP", $"Threads={count}");
        WifReading reading = WifSample.Read(text);
        WifSample.AssertWarns(reading, "WARP", "Threads", words);
        Assert.Equal(4, reading.Document.Warp.Count);
        Assert.Equal(WifSample.TwillDrawdown, WifSample.Drawdown(text));
    }

    [Theory]
    [InlineData("WARP", "Threads=2000000000", "2000000000 ends", "[WARP] Threads")]
    [InlineData("WEFT", "Threads=99999999999999999999", "99999999999999999999 picks", "[WEFT] Threads")]
    [InlineData("WEAVING", "Shafts=65", "65 shafts", "[WEAVING] Shafts")]
    [InlineData("COLOR PALETTE", "Entries=2000000000", "2000000000 colours", "[COLOR PALETTE] Entries")]
    [InlineData("THREADING", "2000000000=1", "end 2000000000", "[THREADING] 2000000000")]
    [InlineData("TREADLING", "1=1\n2=77", "treadle 77", "[TREADLING] 2")]
    [InlineData("LIFTPLAN", "1=1000000000000", "shaft 2147483647", "[LIFTPLAN] 1")]
    public void Case_25_Sizes_above_the_limits_are_refused_before_room_is_made(string section, string lines, string what, string where)
    {
        byte[] file = System.Text.Encoding.UTF8.GetBytes(WifSample.With(section, lines));
        long before = GC.GetAllocatedBytesForCurrentThread();
        InputProblem? problem = WifReader.Read(file).Problem;
        long taken = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.NotNull(problem);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.Contains(where, problem.Where, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Mend);
        Assert.InRange(taken, 0, 1_000_000);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\r\n\r\n")]
    [InlineData("tide tables for the estuary")]
    public void Case_25_A_file_that_holds_nothing_of_the_standard_is_refused(string text) =>
        Assert.NotNull(WifReader.Read(System.Text.Encoding.UTF8.GetBytes(text)).Problem);

    [Fact]
    public void Ends_and_picks_that_cross_too_often_are_refused()
    {
        string text = WifSample.With("WARP", "Threads=20000").Replace("[WEFT]\nThreads=4", "[WEFT]\nThreads=100000", StringComparison.Ordinal);
        InputProblem? problem = WifReader.Read(System.Text.Encoding.UTF8.GetBytes(text)).Problem;
        Assert.Contains("20000 ends and 100000 picks cross", problem!.What, StringComparison.Ordinal);
    }
}
