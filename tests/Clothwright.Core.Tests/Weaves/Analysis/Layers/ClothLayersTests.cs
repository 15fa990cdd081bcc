using System.Collections.Immutable;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis.Layers;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Analysis.Layers;

public class ClothLayersTests
{
    [Fact]
    public void Every_cloth_up_to_four_by_four_falls_into_the_pieces_found_by_searching_which_thread_lies_on_which()
    {
        foreach (Drawdown cloth in EveryCloth.UpTo(4, 4)) AssertAsSearched(cloth);
    }

    [Fact]
    public void Cloths_up_to_four_by_three_hang_together_exactly_when_no_set_of_threads_can_be_lifted_off()
    {
        foreach (Drawdown cloth in EveryCloth.UpTo(4, 3))
        {
            Assert.Equal(LiftingSearch.HangsByEverySet(cloth), ClothLayers.Of(cloth).HangsTogether);
        }
    }

    [Fact]
    public void Cloths_up_to_twelve_by_twelve_fall_into_the_pieces_found_by_searching() =>
        Clothes.Any(12, 12).Sample(AssertAsSearched, iter: 2000, seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Cloths_laid_on_each_other_fall_into_the_pieces_found_by_searching() =>
        Clothes.Stacks(24, 24).Sample(AssertAsSearched, iter: 1500, seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Pieces_are_equal_when_they_hold_the_same_threads()
    {
        ClothLayer[] pieces = [.. ClothLayers.Of(Clothes.Of("1000/1110/0010/1011")).Components];

        Assert.Equal(pieces, ClothLayers.Of(Clothes.Of("1000/1110/0010/1011")).Components);
        Assert.Equal(pieces[0].GetHashCode(), new ClothLayer([0, 2], [0, 2]).GetHashCode());
        Assert.NotEqual(pieces[0], pieces[1]);
    }

    [Fact]
    public void A_loose_thread_is_no_layer()
    {
        ClothLayers layers = ClothLayers.Of(Clothes.Of("101/010/000"));

        Assert.False(layers.HangsTogether);
        Assert.Equal<int>([2], layers.LoosePicks);
        Assert.Equal("pick 3", layers.Components[0].ToString());
    }

    [Fact]
    public void A_single_crossing_is_two_loose_threads()
    {
        ClothLayers layers = ClothLayers.Of(Clothes.Of("1"));

        Assert.Equal(["end 1", "pick 1"], layers.Components.Select(c => c.ToString()));
        Assert.Empty(layers.Layers);
    }

    private static void AssertAsSearched(Drawdown cloth)
    {
        ClothLayers layers = ClothLayers.Of(cloth);
        ulong[] found = [.. layers.Components.Select(c => Bits(c.Ends) | (Bits(c.Picks) << cloth.Ends))];

        // Loose threads side by side (two ends on one level) have no order of their own: pieces are compared as sets, then their order by definition.
        ulong[] searched = [.. LiftingSearch.Pieces(cloth)];
        Array.Sort(searched);
        if (!searched.SequenceEqual(found.Order())) Assert.Fail($"{cloth}: {string.Join("; ", layers.Components)}");
        for (int upper = 0; upper < found.Length; upper++)
        {
            for (int lower = upper + 1; lower < found.Length; lower++) AssertLiesOn(cloth, layers.Components[upper], layers.Components[lower]);
        }
    }

    private static void AssertLiesOn(Drawdown cloth, ClothLayer upper, ClothLayer lower)
    {
        bool warpOver = upper.Ends.All(end => lower.Picks.All(pick => cloth[pick, end]));
        bool weftOver = upper.Picks.All(pick => lower.Ends.All(end => !cloth[pick, end]));
        Assert.True(warpOver && weftOver, $"{cloth}: {upper} does not lie on {lower}");
    }

    private static ulong Bits(ImmutableArray<int> threads) => threads.Aggregate(0UL, (bits, thread) => bits | (1UL << thread));
}
