using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Layers;
using Clothwright.Core.Weaves.Structures;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Weaves;

/// <summary>Tables/profiles.md.</summary>
public class ProfilesTests
{
    private static readonly IReadOnlyDictionary<string, string> Row = MarkdownTable.Load("Tables/profiles.md").Rows[0];

    private static readonly Profile Published = Profile.Parse(Row["blocks"], Row["shown"]).Value;

    [Fact]
    public void A_profile_woven_by_draft_is_as_published() =>
        Assert.Equal(Row["expected"], SummerAndWinter.Of(Published).Draft.Drawdown().ToString());

    [Fact]
    public void A_profile_woven_by_substitution_is_as_published()
    {
        Assert.Equal(Row["expected"], SummerAndWinter.Unit.Substituted(Published).ToString());
        Assert.Equal(Row["expected"], SummerAndWinter.Unit.Woven(Published).Draft.Drawdown().ToString());
    }

    [Fact]
    public void It_hangs_together_and_floats_no_further_than_three()
    {
        Drawdown cloth = SummerAndWinter.Of(Published).Draft.Drawdown();

        Assert.True(ClothLayers.Of(cloth).HangsTogether);
        Assert.Equal(3, ClothFloats.Of(cloth, ClothReading.Repeat).All.Max(f => f.LongestLength));
    }
}
