using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Structures;

public class BlockSubstitutionTests
{
    [Fact]
    public void Every_cell_of_the_profile_becomes_the_one_cloth_or_the_other() =>
        Gen.Select(Clothes.Any(4, 4), Clothes.Any(4, 4), Gen.Int[0, 2].Array[1, 5], Gen.Int[0, 7].Array[1, 4]).Sample(
            (shown, hidden, blocks, lines) =>
            {
                var profile = new Profile([.. blocks.Select(b => b + 1)], [.. lines.Select(l => new ShaftSet((ulong)l))]);
                UnitWeave unit = BlockSubstitution.Unit(shown, hidden);
                Drawdown cloth = BlockSubstitution.Of(shown, hidden, profile).Draft.Drawdown();
                Assert.Equal(unit.Substituted(profile), cloth);
                for (int pick = 0; pick < cloth.Picks; pick++)
                {
                    for (int end = 0; end < cloth.Ends; end++)
                    {
                        Drawdown cell = profile.Shows(pick / unit.Shown.Picks, end / unit.Shown.Ends) ? shown : hidden;
                        Assert.Equal(cell[pick % unit.Shown.Picks % cell.Picks, end % unit.Shown.Ends % cell.Ends], cloth[pick, end]);
                    }
                }
            },
            iter: 200,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void With_the_cells_of_summer_and_winter_it_weaves_summer_and_winter()
    {
        Profile profile = Profile.Parse("ABBA", "A B AB -").Value;

        Assert.Equal(
            SummerAndWinter.Of(profile).Draft.Drawdown(),
            WeaveCatalogue.Make("block substitution", null, new Dictionary<string, string>
            {
                ["unit"] = "1000/1010/0010/0101",
                ["other"] = "1101/1010/0111/0101",
                ["blocks"] = "ABBA",
                ["shown"] = "A B AB -",
            }).Value.Draft.Drawdown());
    }

    [Theory]
    [InlineData("profile unit 2/2 twill other plain", "11001010/01100101/00111010/10010101")]
    [InlineData("block substitution unit=10/01 other=01/10 blocks=AB shown=A", "1001/0110")]
    public void Units_are_named_or_written_out(string words, string firstRows) =>
        Assert.StartsWith(firstRows, WeaveCatalogue.Make(words, null, words.StartsWith("profile", StringComparison.Ordinal) ? new Dictionary<string, string> { ["blocks"] = "AB", ["shown"] = "A" } : null).Value.Draft.Drawdown().ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData("9-end satin", "8-end satin", "unit")]
    [InlineData("foam", "plain", "weave")]
    public void Units_that_do_not_go_together_or_are_no_weave_are_refused(string unit, string other, string where) =>
        Assert.StartsWith(where, WeaveCatalogue.Make("block substitution", null, new Dictionary<string, string> { ["unit"] = unit, ["other"] = other }).Problem!.Where, StringComparison.Ordinal);
}
