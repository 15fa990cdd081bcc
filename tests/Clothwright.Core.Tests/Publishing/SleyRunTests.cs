using Clothwright.Core.Publishing.Composing;
using Clothwright.Core.Setts.Reeds;
using CsCheck;

namespace Clothwright.Core.Tests.Publishing;

public class SleyRunTests
{
    private static string[] Lines(int ends, int floating, string sley) =>
        [.. SleyRun.Across(ends, floating, Sley.Parse(sley).Value).Select(r => $"{r.FirstDent}-{r.LastDent} | {r.FirstEnd}-{r.LastEnd} | {r.EndsInDents}")];

    // Counted by hand: 192 ends at two a dent fill 96 dents; a floating selvedge at each side takes one more.
    [Fact]
    public void Floating_selvedges_have_dents_of_their_own() => Assert.Equal(
        ["1-1 | 1-1 | 1, the floating selvedge", "2-97 | 2-193 | 2", "98-98 | 194-194 | 1, the floating selvedge"],
        Lines(194, 2, "2"));

    // Counted by hand: 21 ends at 1, 1 and 2 are five turns of three dents, and one end more.
    [Fact]
    public void Ends_left_of_the_last_turn_go_on_dent_by_dent() => Assert.Equal(
        ["1-15 | 1-20 | 1, 1 and 2 in turn, 5 times", "16-16 | 21-21 | 1"],
        Lines(21, 0, "1-1-2"));

    // Counted by hand: 5 ends at two a dent are two full dents and one with a single end.
    [Fact]
    public void A_last_dent_may_be_half_full() => Assert.Equal(["1-2 | 1-4 | 2", "3-3 | 5-5 | 1"], Lines(5, 0, "2"));

    [Fact]
    public void Every_end_has_one_dent_and_no_dent_is_left_out()
    {
        Gen.Select(Gen.Int[3, 900], Gen.Bool, Gen.Int[1, 3].Array[1, 5]).Sample((ends, floating, sley) =>
        {
            var runs = SleyRun.Across(ends, floating ? 2 : 0, Sley.Of(sley));
            Assert.Equal((1, 1, ends), (runs[0].FirstDent, runs[0].FirstEnd, runs[^1].LastEnd));
            Assert.All(runs.Zip(runs.Skip(1)), n =>
            {
                Assert.Equal(n.First.LastDent + 1, n.Second.FirstDent);
                Assert.Equal(n.First.LastEnd + 1, n.Second.FirstEnd);
            });
        });
    }
}
