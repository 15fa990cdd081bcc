using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis.Layers;
using Clothwright.Core.Weaves.Structures;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Structures;

public class NetworkDraftTests
{
    private static readonly TwillBase EightShafts = TwillBase.Of(3, 1, 1, 3);

    [Fact]
    public void Every_end_stays_on_the_net_of_its_initial() =>
        Gen.Select(Gen.Int[1, 4].Array[1, 6], Gen.Int[1, 3], Gen.Int[1, 30].Array[1, 60]).Sample((initial, times, line) =>
        {
            int rows = initial.Max();
            int shafts = rows * times;
            var threading = NetworkThreading.Along(initial, shafts, line);
            for (int j = 0; j < line.Length; j++)
            {
                Assert.InRange(threading[j], 1, shafts);
                Assert.Equal((initial[j % initial.Length] - 1) % rows, (threading[j] - 1) % rows);
                // The lowest allowed shaft on or above the line is less than one initial away, counted round.
                Assert.InRange(((threading[j] - line[j]) % shafts + shafts) % shafts, 0, rows - 1);
            }
        });

    [Fact]
    public void A_line_that_does_not_hold_together_is_noted_and_one_that_does_is_not() =>
        Gen.Int[1, 12].Array[4, 16].Sample(line =>
        {
            Weave weave = NetworkDraft.Of([1, 2, 3, 4], line, EightShafts);
            ClothLayers layers = ClothLayers.Of(weave.Draft.Drawdown());
            Assert.Empty(DraftCheck.Problems(weave.Draft));
            Assert.Equal(layers.HangsTogether, !weave.Notes.Any(n => n.Contains("does not hold together", StringComparison.Ordinal)));
        });

    [Fact]
    public void A_line_that_breaks_the_net_where_it_joins_is_noted() =>
        Assert.Contains(NetworkDraft.Of([1, 2, 3, 4], [1, 2, 3, 4, 5, 6], EightShafts).Notes, n => n.Contains("no multiple of the initial's 4", StringComparison.Ordinal));
}
