using Clothwright.Core.Weaves;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves;

public class ShedRowsTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(40)]
    [InlineData(5000)]
    public void A_lift_moves_the_ends_of_its_shafts_however_many_lifts_are_to_come(int lifts) =>
        Gen.Select(Gen.Int[1, 64], Gen.Int[1, 9], Gen.ULong.Array[8]).Sample(
            (shafts, words, asked) =>
            {
                ulong[] ends = [.. Enumerable.Range(0, 64 * words).Select(i => unchecked((ulong)(i + 1) * 0x9E3779B97F4A7C15UL))];
                var rows = new ShedRows(ends, words, shafts, lifts);
                foreach (ulong lift in asked.Append(0UL).Append(ulong.MaxValue).Select(l => l & ShaftSet.FirstOf(shafts).Bits))
                {
                    ulong[] row = [.. Enumerable.Repeat(ulong.MaxValue, words)];
                    rows.Open(row, lift);
                    for (int w = 0; w < words; w++)
                    {
                        ulong joined = new ShaftSet(lift).Members().Aggregate(0UL, (sum, shaft) => sum | ends[(shaft - 1) * words + w]);
                        Assert.Equal(joined, row[w]);
                    }
                }
            },
            iter: 40,
            seed: "0N0XIzNsQ0O2");
}
