using System.Collections.Immutable;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Tests.Yarns;

public class ConstructionNotesTests
{
    [Fact]
    public void Every_construction_has_a_note_for_sett_warp_and_weft()
    {
        Assert.Equal(Enum.GetValues<YarnConstruction>().Order(), ConstructionNotes.All.Select(n => n.Construction).Order());
        Assert.All(ConstructionNotes.All, n => Assert.All([n.What, n.ForTheSett, n.AsWeft], s => Assert.EndsWith(".", s, StringComparison.Ordinal)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ConstructionNotes.Of((YarnConstruction)99));
    }

    // Common practice, no source: chenille fails a snap test, yet serves as warp under even tension.
    [Fact]
    public void Chenille_is_warned_about_with_advice_and_not_refused()
    {
        YarnAdvice advice = Assert.Single(ConstructionNotes.AsWarp(EstuaryYarns.Make("mudflat", "1450", CountSystem.YardsPerPound, "viscose", YarnConstruction.Chenille)));
        Assert.True(advice.IsWarning);
        Assert.Contains("snap test", advice.Says, StringComparison.Ordinal);
        Assert.Contains("serves as warp under even tension", advice.Says, StringComparison.Ordinal);
        Assert.Contains("even tension", advice.Advice, StringComparison.Ordinal);
    }

    // Common practice, no source: a fine metallic monofilament is warped only together with another yarn.
    [Fact]
    public void A_metallic_monofilament_is_warped_only_together_with_another_yarn()
    {
        Yarn glint = EstuaryYarns.Make("glint", "120 den", CountSystem.Denier, "metallic", YarnConstruction.Monofilament);
        Assert.Contains("together with another yarn", Assert.Single(ConstructionNotes.AsWarp(glint)).Advice, StringComparison.Ordinal);
        Assert.Empty(ConstructionNotes.AsWarp(glint, heldWithAnother: true));
    }

    [Fact]
    public void Linen_asks_for_even_tension_because_it_hardly_stretches()
    {
        ImmutableArray<YarnAdvice> advice = ConstructionNotes.AsWarp(EstuaryYarns.Linen);
        Assert.Contains("3 %", Assert.Single(advice).Says, StringComparison.Ordinal);
        Assert.False(advice[0].IsWarning);
    }

    [Fact]
    public void A_plied_merino_needs_no_advice() => Assert.Empty(ConstructionNotes.AsWarp(EstuaryYarns.Merino));

    [Theory]
    [InlineData("chenille", YarnConstruction.Chenille)]
    [InlineData("Bouclé", YarnConstruction.Boucle)]
    [InlineData("boucle", YarnConstruction.Boucle)]
    [InlineData("spun and plied", YarnConstruction.Spun)]
    [InlineData("singles", YarnConstruction.Singles)]
    public void Constructions_are_found_by_name(string text, YarnConstruction construction) => Assert.Equal(construction, ConstructionNotes.Parse(text).Value);

    [Fact]
    public void An_unknown_construction_gets_the_list() =>
        Assert.Contains("spun, soft, singles, reeled", ConstructionNotes.Parse("braided").Problem!.Mend, StringComparison.Ordinal);

    [Fact]
    public void Thickness_of_fancy_yarn_has_to_be_measured() =>
        Assert.Equal(
            [YarnConstruction.Soft, YarnConstruction.Chenille, YarnConstruction.Ribbon, YarnConstruction.Boucle],
            ConstructionNotes.All.Where(n => !n.ThicknessFollowsCount).Select(n => n.Construction));
}
