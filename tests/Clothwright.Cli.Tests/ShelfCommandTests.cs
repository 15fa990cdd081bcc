using System.Text.Json;

namespace Clothwright.Cli.Tests;

public class ShelfCommandTests
{
    [Fact]
    public void A_yarn_is_added_in_free_words_listed_used_and_weighed()
    {
        using var folder = new PassingFolder();
        CommandLine added = Shelf(folder, "add", "8/2 bamboo, 200 g cone, tide blue, 3 left, lot 47", "--json");
        Assert.Equal(ExitCode.Done, added.ExitCode);
        Assert.Equal(("8-2-bamboo-tide-blue", "3 left"), (added.Json.GetProperty("id").GetString(), added.Json.GetProperty("readFrom").GetProperty("packages").GetString()));

        JsonElement listed = Assert.Single(Shelf(folder, "list", "bamboo", "--json").Json.GetProperty("yarns").EnumerateArray());
        // 8/2 cotton is 590.5412 / 4 tex (ASTM D2260); 600 g of it are 4064 m.
        Assert.Equal(600_000 / (590.5412 / 4), listed.GetProperty("metres").GetDouble(), 0.1);
        Assert.Equal(600, listed.GetProperty("grams").GetDouble(), 6);

        Assert.Equal(450, Shelf(folder, "use", "8-2-bamboo-tide-blue", "--mass", "150g", "--json").Json.GetProperty("grams").GetDouble(), 6);
        JsonElement weighed = Shelf(folder, "use", "8-2-bamboo-tide-blue", "--package", "1", "--weighed", "130g", "--tare", "30g", "--humidity", "65", "--json").Json;

        // 100 g net at 65 % r.h. (viscose holds 13 %) at the agreed 11 %: 100 × 1.11 / 1.13 = 98.23 g (ASTM D1909 and D2494, from memory).
        Assert.Equal(100 * 1.11 / 1.13, weighed.GetProperty("packages")[0].GetProperty("agreedGrams").GetDouble(), 1e-6);
    }

    [Fact]
    public void A_count_without_system_is_asked()
    {
        using var folder = new PassingFolder();
        CommandLine asked = Shelf(folder, "add", "2/8 wool, 200 g cone");
        Assert.Equal(ExitCode.BadInput, asked.ExitCode);
        Assert.Contains("does not say its count system", asked.Error, StringComparison.Ordinal);
        Assert.Equal("worsted", Shelf(folder, "add", "2/8 wool, 200 g cone", "--system", "worsted", "--json").Json.GetProperty("system").GetString());
        Assert.Single(Shelf(folder, "list", "--json").Json.GetProperty("yarns").EnumerateArray());
    }

    [Fact]
    public void A_table_comes_in_whole_or_not_at_all_and_goes_out_again()
    {
        using var folder = new PassingFolder();
        string file = folder.File("garne.csv");
        File.WriteAllText(file, "Garn;Nummer;Material;Gewicht (g);Anzahl\nPriel;8/2;Baumwolle;227,5;2\nDüne;16/2;Nebel;200;1\n");
        CommandLine refused = Shelf(folder, "import", file);
        Assert.Equal(ExitCode.BadInput, refused.ExitCode);
        Assert.Contains("line 3, column Material", refused.Error, StringComparison.Ordinal);
        Assert.Contains("empty", Shelf(folder, "list").Output, StringComparison.Ordinal);

        File.WriteAllText(file, File.ReadAllText(file).Replace("Nebel", "Leinen", StringComparison.Ordinal));
        Assert.Equal(2, Shelf(folder, "import", file, "--json").Json.GetProperty("yarns").GetArrayLength());
        Assert.Contains("455 g", Shelf(folder, "list", "priel").Output, StringComparison.Ordinal);

        string own = folder.File("shelf.csv");
        Assert.Equal(ExitCode.Done, Shelf(folder, "export", "--out", own).ExitCode);
        Assert.Equal(ExitCode.BadInput, Shelf(folder, "import", own).ExitCode);
        Assert.Equal(ExitCode.Done, Shelf(folder, "import", own, "--replace").ExitCode);
        Assert.Contains("455 g", Shelf(folder, "list", "priel").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_column_means_can_be_said()
    {
        using var folder = new PassingFolder();
        string file = folder.File("odd.csv");
        File.WriteAllText(file, "x,y,z\nfog,2/8,wool\n");
        CommandLine look = Shelf(folder, "import", file, "--column", "x=name", "--column", "y=count:metric", "--column", "z=fibres", "--look", "--json");
        Assert.False(look.Json.GetProperty("kept").GetBoolean());
        Assert.Equal("fog", look.Json.GetProperty("yarns")[0].GetProperty("id").GetString());
        Assert.Contains("empty", Shelf(folder, "list").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("use", "heron", "--mass", "10g")]
    [InlineData("list", "--near", "teal")]
    [InlineData("list", "--fibre", "gossamer")]
    [InlineData("import", "nowhere.csv")]
    public void What_cannot_be_done_is_said(params string[] words)
    {
        using var folder = new PassingFolder();
        Shelf(folder, "add", "8/2 cotton, 200 g cone");
        CommandLine run = Shelf(folder, words);
        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.StartsWith("clothwright: ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_without_a_studio_is_not_made_by_looking()
    {
        using var folder = new PassingFolder();
        string none = Path.Combine(folder.Path, "none");
        Assert.Equal(ExitCode.BadInput, CommandLine.Run("shelf", "list", "--data", none).ExitCode);
        Assert.False(Directory.Exists(none));
    }

    private static CommandLine Shelf(PassingFolder folder, params string[] words) => CommandLine.Run(["shelf", .. words, "--data", Path.Combine(folder.Path, "studio")]);
}
