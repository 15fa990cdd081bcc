using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Analysis.Floats;

public class ClothFloatsTests
{
    [Fact]
    public void Every_float_of_every_repeat_up_to_four_by_four_is_found()
    {
        foreach (Drawdown cloth in EveryCloth.UpTo(4, 4))
        {
            ClothFloats floats = ClothFloats.Of(cloth, ClothReading.Repeat);
            foreach (FloatTally tally in floats.All)
            {
                // times[length] by definition; times[0] counts the threads that never change.
                int[] times = RunsRound(cloth, tally.Kind);
                if (times[0] != tally.EndlessThreads) Assert.Fail($"{cloth} {tally.Kind}: {times[0]} endless, not {tally.EndlessThreads}");
                for (int length = 1; length < times.Length; length++)
                {
                    if (times[length] != tally.Times(length)) Assert.Fail($"{cloth} {tally.Kind}: {times[length]} floats of {length}, not {tally.Times(length)}");
                }
            }
        }
    }

    [Fact]
    public void Floats_of_cloths_up_to_twelve_by_twelve_agree_with_counting_one_by_one() =>
        Clothes.Any(12, 12).Sample(AssertAsCountedOneByOne, iter: 3000, seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Floats_of_wide_cloths_agree_with_counting_one_by_one() =>
        Clothes.Blocks(300, 200).Sample(AssertAsCountedOneByOne, iter: 100, seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Threads_that_weave_alike_are_counted_each()
    {
        // 2/2 basket over 4 × 4: each of the 4 ends has one float of 2 on each face.
        ClothFloats floats = ClothFloats.Of(Clothes.Of("1100/1100/0011/0011"), ClothReading.Repeat);

        Assert.Equal(4, floats.WarpFace.Times(2));
        Assert.Equal(4, floats.WarpFace.Total);
        Assert.Equal(2, floats.WarpFace.MeanLength);
    }

    [Fact]
    public void An_endless_float_comes_before_any_other_and_names_its_thread()
    {
        ClothFloats floats = ClothFloats.Of(Clothes.Of("101/010/000"), ClothReading.Repeat);

        Assert.Equal(new ThreadFloat(FloatKind.WeftFace, Line: 2, Start: 0, Length: 3, Endless: true), floats.WeftFace.Longest);
        Assert.Equal(1, floats.WeftFace.EndlessThreads);
        Assert.Equal(int.MaxValue, floats.WeftFace.LongestLength);
        Assert.Equal("pick 3 over every end", floats.WeftFace.Longest.ToString());
    }

    [Fact]
    public void A_cloth_without_a_kind_of_float_says_so()
    {
        ClothFloats floats = ClothFloats.Of(Clothes.Of("11/11"), ClothReading.Cut);

        Assert.Null(floats.WarpBack.Longest);
        Assert.Equal(0, floats.WarpBack.LongestLength);
        Assert.Equal(0, floats.WarpBack.MeanLength);
        Assert.Equal(2, floats.WarpFace.LongestLength);
    }

    [Fact]
    public void A_float_reads_as_a_weaver_counts()
    {
        ThreadFloat longest = ClothFloats.Of(Clothes.Of("1100/0110/0011/1001"), ClothReading.Cut).WarpFace.Longest!.Value;

        Assert.Equal("end 2 over 2 picks from pick 1", longest.ToString());
    }

    private static int[] RunsRound(Drawdown cloth, FloatKind kind)
    {
        bool warp = kind is FloatKind.WarpFace or FloatKind.WarpBack;
        bool value = kind is FloatKind.WarpFace or FloatKind.WeftBack;
        int lines = warp ? cloth.Ends : cloth.Picks;
        int threads = warp ? cloth.Picks : cloth.Ends;
        bool At(int line, int thread) => warp ? cloth[thread % threads, line] : cloth[line, thread % threads];
        var times = new int[threads + 1];
        for (int line = 0; line < lines; line++)
        {
            bool changes = false;
            for (int start = 0; start < threads; start++)
            {
                if (At(line, start) == At(line, start + threads - 1)) continue;
                changes = true;
                int length = 1;
                while (At(line, start + length) == At(line, start)) length++;
                if (At(line, start) == value) times[length]++;
            }

            if (!changes && At(line, 0) == value) times[0]++;
        }

        return times;
    }

    private static void AssertAsCountedOneByOne(Drawdown cloth)
    {
        foreach (ClothReading reading in Enum.GetValues<ClothReading>())
        {
            ClothFloats floats = ClothFloats.Of(cloth, reading);
            foreach (FloatTally tally in floats.All)
            {
                ThreadFloat[] all = [.. LongFloats.Of(cloth, tally.Kind, reading, moreThan: 0)];
                CheckOneByOne(cloth, reading, tally.Kind, all);
                var counted = all.Where(f => !f.Endless).GroupBy(f => f.Length).Select(g => new FloatCount(g.Key, g.Count())).OrderBy(c => c.Length);
                Assert.Equal<FloatCount>(counted, tally.Counts);
                Assert.Equal(all.Count(f => f.Endless), tally.EndlessThreads);
                ThreadFloat? longest = all.Length == 0
                    ? null
                    : all.OrderByDescending(f => f.Endless).ThenByDescending(f => f.Length).ThenBy(f => f.Line).ThenBy(f => f.Start).First();
                Assert.Equal(longest, tally.Longest);
            }
        }
    }

    // The definition, crossing by crossing: a float is a run of one value that cannot be made longer at either end.
    private static void CheckOneByOne(Drawdown cloth, ClothReading reading, FloatKind kind, ThreadFloat[] found)
    {
        bool warp = kind is FloatKind.WarpFace or FloatKind.WarpBack;
        bool value = kind is FloatKind.WarpFace or FloatKind.WeftBack;
        int lines = warp ? cloth.Ends : cloth.Picks;
        int threads = warp ? cloth.Picks : cloth.Ends;
        bool At(int line, int thread) => warp ? cloth[thread, line] : cloth[line, thread];
        int covered = 0;
        foreach (ThreadFloat f in found)
        {
            for (int i = 0; i < f.Length; i++) Assert.Equal(value, At(f.Line, (f.Start + i) % threads));
            covered += f.Length;
            if (f.Endless) continue;
            bool round = reading == ClothReading.Repeat;
            if (round || f.Start > 0) Assert.NotEqual(value, At(f.Line, (f.Start + threads - 1) % threads));
            if (round || f.Start + f.Length < threads) Assert.NotEqual(value, At(f.Line, (f.Start + f.Length) % threads));
        }

        int crossings = Enumerable.Range(0, lines).Sum(l => Enumerable.Range(0, threads).Count(t => At(l, t) == value));
        Assert.Equal(crossings, covered);
        Assert.Equal(found.Length, found.Select(f => (f.Line, f.Start)).Distinct().Count());
    }
}
