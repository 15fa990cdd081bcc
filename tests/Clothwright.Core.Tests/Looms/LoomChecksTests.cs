using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Tests.Looms;

public class LoomChecksTests
{
    private static readonly Loom Table = new(
        "table-8", "table loom", LoomKind.Table, Length.FromCentimetres(70), 8, 0, ShedAction.Levers, LoomWaste.Customary(LoomKind.Table, 8, ShedAction.Levers));

    private static readonly Loom Rigid = Table with { Kind = LoomKind.RigidHeddle, Shafts = 3, RigidHeddles = 2, Shed = ShedAction.Rising };

    [Fact]
    public void A_sound_loom_has_no_problems()
    {
        Assert.Empty(LoomChecks.Problems(Table));
        Assert.Empty(LoomChecks.Problems(Rigid));
        Assert.Empty(LoomChecks.Problems(Table with { Kind = LoomKind.Floor, Treadles = 10, Shed = ShedAction.Countermarche }));
    }

    public static TheoryData<string, Loom> Unsound() => new()
    {
        { "id", Table with { Id = " " } },
        { "weavingWidth", Table with { WeavingWidth = Length.Zero } },
        { "weavingWidth", Table with { WeavingWidth = Length.FromMetres(7) } },
        { "shafts", Table with { Shafts = 1 } },
        { "shafts", Table with { Shafts = 65 } },
        { "treadles", Table with { Treadles = -1 } },
        { "treadles", Table with { Treadles = 6 } },
        { "warpBeams", Table with { WarpBeams = 3 } },
        { "heddlesPerShaft", Table with { HeddlesPerShaft = -5 } },
        { "rigidHeddles", Table with { RigidHeddles = 1 } },
        { "rigidHeddles", Rigid with { RigidHeddles = 4, Shafts = 5 } },
        { "shafts", Rigid with { Shafts = 4 } },
        { "shafts", Table with { Kind = LoomKind.Floor, Shafts = 5, Shed = ShedAction.Counterbalance } },
    };

    [Theory]
    [MemberData(nameof(Unsound))]
    public void An_unsound_loom_names_the_field_and_the_mend(string where, Loom loom)
    {
        InputProblem problem = Assert.Single(LoomChecks.Problems(loom));
        Assert.Equal(where, problem.Where);
        Assert.NotEmpty(problem.Mend);
    }

    [Fact]
    public void A_warp_wider_than_the_loom_is_a_problem_with_both_widths()
    {
        Assert.Null(LoomChecks.WidthProblem(Table, Length.FromCentimetres(70)));
        InputProblem problem = LoomChecks.WidthProblem(Table, Length.FromCentimetres(71))!;
        Assert.Contains("71.0 cm", problem.What, StringComparison.Ordinal);
        Assert.Contains("70.0 cm", problem.What, StringComparison.Ordinal);
    }

    // Customary ranges, common practice, no source: rigid heddle 40-60, table 50-70, floor 70-90, eight shafts or countermarche 80-110 cm.
    [Theory]
    [InlineData(LoomKind.RigidHeddle, 2, ShedAction.Rising, 50)]
    [InlineData(LoomKind.Table, 4, ShedAction.Levers, 60)]
    [InlineData(LoomKind.Floor, 4, ShedAction.Rising, 80)]
    [InlineData(LoomKind.Floor, 8, ShedAction.Rising, 95)]
    [InlineData(LoomKind.Floor, 4, ShedAction.Countermarche, 95)]
    public void Waste_is_the_middle_of_the_customary_range_with_a_spread(LoomKind kind, int shafts, ShedAction shed, double centimetres)
    {
        var waste = LoomWaste.Customary(kind, shafts, shed);
        Assert.Equal(centimetres, waste.Value.Centimetres, 1e-9);
        Assert.True(waste.StandardDeviation > 0.05);
        Assert.Equal(centimetres - 25, LoomWaste.TiedOn(waste).Value.Centimetres, 1e-9);
    }

    [Theory]
    [InlineData("Rigid Heddle", LoomKind.RigidHeddle)]
    [InlineData("rigid-heddle", LoomKind.RigidHeddle)]
    [InlineData(" table loom ", LoomKind.Table)]
    [InlineData("FLOOR", LoomKind.Floor)]
    public void A_kind_of_loom_is_read(string text, LoomKind kind) => Assert.Equal(kind, LoomWords.ParseKind(text).Value);

    [Theory]
    [InlineData("jack", ShedAction.Rising)]
    [InlineData("Counter-balance", ShedAction.Counterbalance)]
    [InlineData("countermarch", ShedAction.Countermarche)]
    [InlineData("sinking", ShedAction.Sinking)]
    [InlineData("levers", ShedAction.Levers)]
    public void A_shed_is_read(string text, ShedAction shed) => Assert.Equal(shed, LoomWords.ParseShed(text).Value);

    [Fact]
    public void Unknown_words_are_answered_with_the_known_ones()
    {
        Assert.Contains("table", LoomWords.ParseKind("spaceship").Problem!.Mend, StringComparison.Ordinal);
        Assert.Contains("jack", LoomWords.ParseShed("magic").Problem!.Mend, StringComparison.Ordinal);
    }
}
