using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Tests.Weaves.Structures;

public class WeaveCatalogueTests
{
    [Theory]
    [InlineData("plain", "10/01")]
    [InlineData("Tabby", "10/01")]
    [InlineData("plain 4 shafts", "1010/0101")]
    [InlineData("basket 2/2", "1100/1100/0011/0011")]
    [InlineData("warp rib 2/2", "10/10/01/01")]
    [InlineData("weft rib 2/2", "1100/0011")]
    [InlineData("2/2 twill", "1100/0110/0011/1001")]
    [InlineData("2/2 TWILL S", "1001/0011/0110/1100")]
    [InlineData("twill base=3/1", "1110/0111/1011/1101")]
    [InlineData("pointed 2/2 twill", "110001/011011/001110/100100")]
    [InlineData("birdseye 1/3 twill", "100000/010001/001010/000100/001010/010001")]
    [InlineData("bird’s-eye 1/3", "100000/010001/001010/000100/001010/010001")]
    [InlineData("false satin", "1000/0100/0001/0010")]
    [InlineData("5-end satin step 2 weft-faced", "10000/00100/00001/01000/00010")]
    [InlineData("5 end sateen", "10000/00100/00001/01000/00010")]
    [InlineData("satin", "01111/11011/11110/10111/11101")]
    [InlineData("irregular sateen order 1 3 5 2 6 4", "100000/001000/000010/010000/000001/000100")]
    public void Words_are_read_as_the_weave_they_name(string words, string drawdown) =>
        Assert.Equal(drawdown, WeaveCatalogue.Make(words).Value.Draft.Drawdown().ToString());

    [Fact]
    public void Parameters_go_before_the_words()
    {
        Weave weave = WeaveCatalogue.Make("8-end satin step 3", null, new Dictionary<string, string> { ["Step"] = "5" }).Value;

        Assert.Equal("8-end satin, step 5", weave.Name);
    }

    [Theory]
    [InlineData("2/2 twil", "twill")]
    [InlineData("pointd twill", "pointd")]
    [InlineData("bascet", "basket")]
    [InlineData("rosepat", "rosepath")]
    public void A_misspelt_name_is_answered_with_names_like_it(string words, string near)
    {
        InputProblem problem = WeaveCatalogue.Make(words).Problem!;

        Assert.Contains(near, problem.What + problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_that_means_nothing_is_pointed_at()
    {
        InputProblem problem = WeaveCatalogue.Make("2/2 twill sideways").Problem!;

        Assert.Equal(10, problem.Position);
        Assert.Contains("sideways", problem.What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("6-end satin", "irregular")]
    [InlineData("4-end satin", "broken")]
    [InlineData("8-end satin step 2", "3, 5")]
    [InlineData("2/2/1 twill", "for example 2/2")]
    [InlineData("broken 1/2 twill", "4 or more")]
    [InlineData("advancing 2/2 twill advance 4", "1 to 3")]
    [InlineData("plain 3 shafts", "even")]
    [InlineData("twill up=3", "base")]
    public void What_cannot_be_woven_is_refused_with_the_way_out(string words, string mend) =>
        Assert.Contains(mend, WeaveCatalogue.Make(words).Problem!.Mend, StringComparison.Ordinal);

    [Theory]
    [InlineData(0, 10)]
    [InlineData(10, 0)]
    [InlineData(2_000_000_000, 10)]
    [InlineData(10, -1)]
    public void A_size_outside_the_limits_is_refused(int ends, int picks) =>
        Assert.False(WeaveCatalogue.Make("plain", new WeaveSize(ends, picks)).Succeeded);

    [Fact]
    public void Every_weave_can_be_made_by_each_of_its_names_and_at_any_size()
    {
        foreach (WeaveEntry entry in WeaveCatalogue.All)
        {
            foreach (string name in entry.OtherNames.Prepend(entry.Name))
            {
                Weave weave = WeaveCatalogue.Make(name, new WeaveSize(37, 23)).Value;
                Assert.Same(entry, WeaveCatalogue.Find(name));
                Assert.Equal((37, 23), (weave.Draft.Ends, weave.Draft.Picks));
                Assert.Equal((37, 23), (weave.EndRoles.Length, weave.PickRoles.Length));
            }
        }
    }

    [Fact]
    public void No_two_weaves_share_a_name()
    {
        string[] names = [.. WeaveCatalogue.All.SelectMany(e => e.OtherNames.Prepend(e.Name))];

        Assert.Equal(names.Length, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }
}
