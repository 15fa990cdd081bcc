using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Layers;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Analysis;

public class ClothOutlineTests
{
    [Fact]
    public void What_the_draft_tells_of_alike_ends_and_picks_is_what_the_cloth_shows() =>
        Clothes.Drafts(mostShafts: 64, mostThreads: 90).Sample(AssertAlike, iter: 1500, seed: "0N0XIzNsQ0O2");

    [Fact]
    public void So_it_is_for_few_shafts_and_many_threads() =>
        Clothes.Drafts(mostShafts: 6, mostThreads: 300).Sample(AssertAlike, iter: 300, seed: "0N0XIzNsQ0O2");

    private static void AssertAlike(Draft draft)
    {
        ClothOutline fromDraft = ClothOutline.Of(draft, out Drawdown cloth);
        ClothOutline fromCloth = ClothOutline.Of(cloth);
        Assert.Equal(Drawdown.From(draft.Ends, draft.Picks, (pick, end) => draft.Lift(pick).Overlaps(draft.Threading[end]) == draft.RisingShed), cloth);
        Assert.Equal(fromCloth.Counts, fromDraft.Counts);
        Assert.Equal<ClothLayer>(fromCloth.Layers.Components, fromDraft.Layers.Components);
        foreach ((FloatTally one, FloatTally other) in fromDraft.Floats.All.Zip(fromCloth.Floats.All))
        {
            Assert.Equal<FloatCount>(other.Counts, one.Counts);
            Assert.Equal((other.EndlessThreads, other.Longest), (one.EndlessThreads, one.Longest));
        }
    }
}
