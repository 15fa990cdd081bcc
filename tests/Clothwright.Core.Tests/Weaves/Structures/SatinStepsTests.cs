using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Tests.Weaves.Structures;

public class SatinStepsTests
{
    [Fact]
    public void There_are_two_steps_fewer_than_numbers_without_a_common_divisor()
    {
        for (int n = 3; n <= 64; n++)
        {
            int totient = Enumerable.Range(1, n).Count(s => System.Numerics.BigInteger.GreatestCommonDivisor(s, n) == 1);
            Assert.Equal(totient - 2, SatinSteps.On(n).Length);
        }
    }

    [Fact]
    public void A_quarter_turn_of_the_cloth_is_the_satin_of_the_inverse_step()
    {
        for (int n = 5; n <= 20; n++)
        {
            foreach (int step in SatinSteps.On(n))
            {
                var cloth = Satin.Of(n, step, SatinFace.Weft).Draft.Drawdown();
                var turned = Satin.Of(n, SatinSteps.QuarterTurn(n, step), SatinFace.Weft).Draft.Drawdown();
                Assert.All(Enumerable.Range(0, n * n), i => Assert.Equal(cloth[i / n, i % n], turned[i % n, i / n]));
            }
        }
    }

    [Theory]
    [InlineData(5, 2)]
    [InlineData(8, 3)]
    [InlineData(12, 5)]
    [InlineData(13, 5)]
    [InlineData(16, 3)]
    public void The_best_step_keeps_the_binding_points_furthest_apart(int ends, int step)
    {
        Assert.Equal(step, SatinSteps.Best(ends));
        Assert.Equal(SatinSteps.UpToMirror(ends).Max(t => Nearest(ends, t)), Nearest(ends, SatinSteps.Best(ends)!.Value));
    }

    [Fact]
    public void There_is_no_best_step_where_there_is_no_satin()
    {
        Assert.Null(SatinSteps.Best(4));
        Assert.Null(SatinSteps.Best(6));
    }

    private static int Nearest(int ends, int step) => (
        from p in Enumerable.Range(-ends, 2 * ends + 1)
        from e in Enumerable.Range(-ends, 2 * ends + 1)
        where (p, e) != (0, 0) && (e - p * step) % ends == 0
        select p * p + e * e).Min();
}
