using Clothwright.Core.Colours.Stripes;
using CsCheck;

namespace Clothwright.Core.Tests.Colours.Stripes;

public class StripeTests
{
    [Fact]
    public void Widths_fill_the_threads_and_keep_within_one_of_their_share() =>
        Gen.Select(Gen.Double[0, 50].List[1, 12], Gen.Int[0, 2000]).Where(g => g.Item1.Sum() > 0).Sample((weights, threads) =>
        {
            var widths = StripeWidths.Shared(weights, threads);
            Assert.Equal(threads, widths.Sum());
            Assert.All(widths.Select((w, i) => (Width: w, Exact: weights[i] / weights.Sum() * threads)), w => Assert.True(Math.Abs(w.Width - w.Exact) < 1 + 1e-9));
        });

    [Fact]
    public void A_gradient_holds_as_many_of_both_and_mirrors_itself_within_a_thread() =>
        Gen.Int[1, 400].Sample(threads =>
        {
            var second = ThreadGradient.Between(threads);
            Assert.InRange(second.Count(s => s) * 2 - threads, -1, 1);
            int half = threads / 2;
            Assert.True(second[half..].Count(s => s) >= second[..half].Count(s => s));
        });

    [Fact]
    public void A_passage_goes_through_every_yarn_in_turn()
    {
        var order = ThreadGradient.Through(3, 40);
        Assert.Equal(40, order.Length);
        Assert.All(order[..20], y => Assert.InRange(y, 0, 1));
        Assert.All(order[20..], y => Assert.InRange(y, 1, 2));
    }

    [Fact]
    public void Stripes_by_lot_are_the_same_for_the_same_seed_and_fill_the_width() =>
        Gen.Select(Gen.Int[1, 500], Gen.Int[1, 9], Gen.Int[0, 20], Gen.ULong).Sample((threads, least, more, seed) =>
        {
            var widths = StripeWidths.ByLot(threads, least, least + more, seed);
            Assert.Equal(threads, widths.Sum());
            Assert.All(widths[..^1], w => Assert.InRange(w, least, least + more));
            Assert.True(widths.SequenceEqual(StripeWidths.ByLot(threads, least, least + more, seed)));
        });

    [Fact]
    public void A_summing_series_goes_back_from_its_widest() =>
        Assert.Equal([1.0, 1, 2, 3, 5, 3, 2, 1, 1], [.. StripeWidths.Summing(5, mirrored: true)]);

    [Fact]
    public void Weights_that_say_nothing_are_refused()
    {
        Assert.Throws<ArgumentException>(() => StripeWidths.Shared([0, 0], 10));
        Assert.Throws<ArgumentException>(() => StripeWidths.Shared([1, double.NaN], 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => StripeWidths.Shared([1], -1));
    }
}
