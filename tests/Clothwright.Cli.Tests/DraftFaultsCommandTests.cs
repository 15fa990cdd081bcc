using System.Text.Json;

namespace Clothwright.Cli.Tests;

public class DraftFaultsCommandTests
{
    private const string Twill = "1234123412341234 | 1:12 2:23 3:34 4:14 | 1234123412341234";

    [Theory]
    // The cells and floats stand in the table of published faults, found by two independent programs.
    [InlineData("end 7 on shaft 4", 8, "2 2 3 3")]
    [InlineData("end 7 on shaft 1", 16, "2 2 3 3")]
    public void A_slip_looks_as_two_independent_programs_found(string slip, int cells, string floats)
    {
        JsonElement told = CommandLine.Run("draft", "faults", Twill, "--slip", slip, "--json").Json.GetProperty("slips")[0];
        JsonElement after = told.GetProperty("longestFloatsAfter");

        Assert.Equal(cells, told.GetProperty("changedCrossings").GetArrayLength());
        Assert.Equal(floats, string.Join(' ', new[] { "warpFace", "warpBack", "weftFace", "weftBack" }.Select(f => after.GetProperty(f).GetInt32())));
    }

    [Theory]
    [InlineData("end 7 on shaft 4", "WrongHeddle", "End 7 is on shaft 4 instead of shaft 3.")]
    [InlineData("End 7 on shafts 1 and 2", "WrongHeddle", "End 7 is on shafts 1 and 2 instead of shaft 3.")]
    [InlineData("end 7 on no shaft", "WrongHeddle", "End 7 is on no shaft instead of shaft 3.")]
    [InlineData("ends 8 and 7 exchanged", "CrossedEnds", "Ends 7 and 8 have changed places.")]
    [InlineData("end 7 is left out", "EndLeftOut", "End 7 (shaft 3) is left out.")]
    [InlineData("end 7 missing", "EndLeftOut", "End 7 (shaft 3) is left out.")]
    [InlineData("end 7 doubled", "EndDoubled", "End 7 (shaft 3) is doubled: two ends work alike side by side.")]
    [InlineData("dent before end 7 empty", "MissedDent", "A dent before end 7 is empty: an open streak along the cloth, the weave itself is right.")]
    [InlineData("dent of end 7 crowded", "MissedDent", "The dent of end 7 holds one end too many: a dense streak along the cloth, the weave itself is right.")]
    [InlineData("pick 3 on treadle 2", "WrongTreadle", "Pick 3 is woven on treadle 2 instead of treadle 3.")]
    [InlineData("pick 3 on treadles 2, 4", "WrongTreadle", "Pick 3 is woven on treadles 2 and 4 instead of treadle 3.")]
    [InlineData("pick 3 left out", "PickLeftOut", "Pick 3 (treadle 3) is left out.")]
    [InlineData("pick 3 woven twice", "PickDoubled", "Pick 3 (treadle 3) is woven twice; with one shuttle the second pulls the first out at the edge.")]
    [InlineData("treadle 2 not tied to shaft 3", "WrongTie", "Treadle 2 is not tied to shaft 3.")]
    [InlineData("treadle 2 also tied to shaft 4", "WrongTie", "Treadle 2 is also tied to shaft 4.")]
    public void Every_kind_of_slip_is_told_in_plain_words(string words, string kind, string sentence)
    {
        JsonElement slip = CommandLine.Run("draft", "faults", Twill, "--slip", words, "--json").Json.GetProperty("slips")[0];

        Assert.Equal(kind, slip.GetProperty("kind").GetString());
        Assert.Equal(sentence, slip.GetProperty("what").GetString());
        Assert.NotEmpty(slip.GetProperty("looks").GetString()!);
        Assert.NotEmpty(slip.GetProperty("mend").GetString()!);
    }

    [Fact]
    public void A_lift_plan_is_told_by_its_shafts()
    {
        using var folder = new PassingFolder();
        File.WriteAllText(folder.File("levers.csv"), "part,number,value\nshafts,,2\nshed,,rising\nend,1,1\nend,2,2\nlift,1,1\nlift,2,2\n");
        CommandLine run = CommandLine.Run("draft", "faults", folder.File("levers.csv"), "--slip", "pick 2 lifts 1 and 2", "--json");

        Assert.Equal("Pick 2 moves shafts 1 and 2 instead of shaft 2.", run.Json.GetProperty("slips")[0].GetProperty("what").GetString());
        Assert.Equal(ExitCode.BadInput, CommandLine.Run("draft", "faults", folder.File("levers.csv"), "--slip", "pick 2 on treadle 1").ExitCode);
    }

    [Theory]
    [InlineData("end 7 on shaft 4")]
    [InlineData("pick 5 on treadle 2")]
    [InlineData("ends 7 and 8 crossed")]
    [InlineData("treadle 2 not tied to shaft 3")]
    [InlineData("end 7 left out")]
    [InlineData("pick 6 doubled")]
    public void What_a_slip_does_is_traced_back_to_it(string slip)
    {
        CommandLine forward = CommandLine.Run("draft", "faults", Twill, "--slip", slip, "--json");
        string what = forward.Json.GetProperty("slips")[0].GetProperty("what").GetString()!;
        string seen = string.Join('/', forward.Json.GetProperty("drawdown").EnumerateArray().Select(r => r.GetString()));
        CommandLine back = CommandLine.Run("draft", "faults", Twill, "--seen", seen, "--json");

        Assert.Equal(ExitCode.CheckFailed, back.ExitCode);
        Assert.False(back.Json.GetProperty("nothingWrong").GetBoolean());
        // A neighbour of the same kind may explain it as well; the slip made is among the readings.
        Assert.Contains(back.Json.GetProperty("readings").EnumerateArray(), r => r.GetProperty("slips")[0].GetProperty("what").GetString() == what);
    }

    [Fact]
    public void Several_slips_act_one_after_the_other()
    {
        CommandLine run = CommandLine.Run("draft", "faults", Twill, "--slip", "end 7 left out", "--slip", "end 7 on shaft 1", "--json");

        Assert.Equal("End 7 is on shaft 1 instead of shaft 4.", run.Json.GetProperty("slips")[1].GetProperty("what").GetString());
        Assert.Equal(15, run.Json.GetProperty("drawdown")[0].GetString()!.Length);
    }

    [Fact]
    public void The_cloth_that_was_meant_has_nothing_wrong()
    {
        CommandLine run = CommandLine.Run("draft", "faults", "2/2 twill", "--seen", "1001/1100/0110/0011");

        // The catalogue's twill may start on another shed: what is seen has to begin with its first pick.
        string right = string.Join('/', CommandLine.Run("draft", "make", "2/2 twill", "--json").Json.GetProperty("drawdown").EnumerateArray().Select(r => r.GetString()));
        Assert.Equal(ExitCode.CheckFailed, run.ExitCode);
        Assert.Equal("The cloth is as the draft wants it.\n", CommandLine.Run("draft", "faults", "2/2 twill", "--seen", right).Output.ReplaceLineEndings("\n"));
    }

    [Fact]
    public void A_repeat_is_widened_to_what_is_seen()
    {
        string seen = string.Join('/', CommandLine.Run("draft", "faults", "2/2 twill", "--ends", "24", "--slip", "end 7 left out", "--json").Json
            .GetProperty("drawdown").EnumerateArray().Select(r => r.GetString()));
        CommandLine run = CommandLine.Run("draft", "faults", "2/2 twill", "--seen", seen);

        Assert.Contains("End 7 (shaft 3) is left out.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_grid_of_marks_and_a_picture_are_read_from_files()
    {
        using var folder = new PassingFolder();
        File.WriteAllText(folder.File("marks.txt"), "....\n..X.\n....\n....\n");
        CommandLine.Run("draft", "make", "2/2 twill", "--out", folder.File("twill.txt"));
        CommandLine marked = CommandLine.Run("draft", "faults", "2/2 twill", "--marks", folder.File("marks.txt"), "--json");
        CommandLine seen = CommandLine.Run("draft", "faults", "2/2 twill", "--seen", folder.File("twill.txt"), "--json");

        Assert.Equal(ExitCode.CheckFailed, marked.ExitCode);
        Assert.NotEqual(0, marked.Json.GetProperty("readings").GetArrayLength());
        Assert.True(seen.Json.GetProperty("nothingWrong").GetBoolean());
    }

    [Fact]
    public void What_no_few_slips_explain_is_said_so()
    {
        CommandLine run = CommandLine.Run("draft", "faults", "plain", "--seen", "10010110/01101001/10101010/00111100/01010101/11100010/10001011/01011010", "--most-slips", "1");

        Assert.Equal(ExitCode.CheckFailed, run.ExitCode);
        Assert.True(run.Output.Contains("unexplained", StringComparison.Ordinal) || run.Output.Contains("No 1 slips", StringComparison.Ordinal), run.Output);
    }

    [Theory]
    [InlineData("--slip", "--slip", "gremlins in the reed")]
    [InlineData("--slip", "--slip", "end 99 left out")]
    [InlineData("--slip", "--slip", "end 7 on shaft 9")]
    [InlineData("--slip", "--slip", "end 7 on shaft")]
    [InlineData("--slip", "--slip", "ends 1 and 4 crossed")]
    [InlineData("--slip", "--slip", "pick 2 lifts 1")]
    [InlineData("--slip", "--slip", "treadle 1 also tied to shaft 1")]
    [InlineData("--slip", "--slip", "treadle 1 not tied to shaft 3")]
    [InlineData("--slip", "--slip", "end 99999999999999999999 left out")]
    [InlineData("options")]
    [InlineData("options", "--seen", "10/01", "--slip", "end 1 left out")]
    [InlineData("--seen", "--seen", "10/0")]
    [InlineData("file", "--seen", "nowhere.txt")]
    [InlineData("--most-slips", "--seen", "10/01", "--most-slips", "9")]
    [InlineData("--ends", "--seen", "10/01", "--ends", "40")]
    [InlineData("--ends", "--slip", "end 1 left out", "--ends", "0")]
    public void A_slip_on_the_command_line_is_named_with_its_option(string place, params string[] options)
    {
        CommandLine run = CommandLine.Run(["draft", "faults", Twill, .. options]);

        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.StartsWith($"clothwright: {place}: ", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }
}
