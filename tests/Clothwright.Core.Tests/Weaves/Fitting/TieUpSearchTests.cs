using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Fitting;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Fitting;

public class TieUpSearchTests
{
    [Theory]
    [InlineData(3, 7, 2)]
    [InlineData(3, 7, 3)]
    [InlineData(4, 9, 2)]
    [InlineData(4, 9, 3)]
    public void Fewest_treadles_agree_with_trying_every_set_of_treadles(int shafts, int most, int feet) =>
        FittingGen.Lifts(shafts, most).Sample(lifts =>
        {
            TieUpAnswer answer = new BranchAndBoundSearch().Solve(TieUpProblem.Union(lifts, feet));
            Assert.True(answer.Proved);
            Assert.Equal(BySets([.. Enumerable.Range(1, (1 << shafts) - 1).Select(t => (t, 0))], lifts, feet, lift => (lift, 0)), answer.Chosen.Length);
        }, iter: 40);

    [Fact]
    public void A_sharing_of_twelve_shafts_that_was_planted_is_found_or_bettered() =>
        // Every pattern of one half of the shafts meets every pattern of the other: three and three treadles press all nine lifts.
        Gen.Select(Gen.ULong[1, 4094], Gen.ULong[0, 4095].Array[3], Gen.ULong[0, 4095].Array[3]).Sample(
            (half, some, others) =>
            {
                ShaftSet[] lifts =
                [
                    .. (from a in some from b in others select new ShaftSet((a & half) | (b & ~half & 0xFFF))).Where(l => l.Count is > 0 and < 12).Distinct(),
                ];
                if (lifts.Length == 0) return;
                TieUpAnswer answer = new BranchAndBoundSearch().Solve(TieUpProblem.Countermarche(lifts, 12, 2));
                Assert.True(answer.Chosen.Length <= 6, $"{answer.Chosen.Length} treadles for {lifts.Length} lifts, half {half:x}");
            },
            iter: 25);

    [Fact]
    public void All_lifts_of_five_shafts_can_be_tied_to_ten_treadles_in_112_ways_and_to_nine_in_none()
    {
        // Each lift of one shaft has to be a treadle; the rest is every choice among the other 25 sets, tried one by one.
        int[] singles = [1, 2, 4, 8, 16];
        int[] larger = [.. Enumerable.Range(1, 30).Except(singles)];
        Assert.Equal(112, Choices(larger, 5).Count(EveryLift));
        Assert.Equal(0, Choices(larger, 4).Count(EveryLift));

        bool EveryLift(int[] chosen)
        {
            int[] treadles = [.. singles, .. chosen];
            uint pressed = 0;
            foreach (int a in treadles)
            {
                foreach (int b in treadles) pressed |= 1u << (a | b);
            }

            return (pressed & 0x7FFFFFFE) == 0x7FFFFFFE;
        }

        static IEnumerable<int[]> Choices(int[] from, int count) => count == 0
            ? [[]]
            : Enumerable.Range(0, from.Length).SelectMany(i => Choices(from[(i + 1)..], count - 1).Select(rest => (int[])[from[i], .. rest]));
    }

    [Fact]
    public void Fewest_countermarche_treadles_agree_with_trying_every_set_of_ties() =>
        FittingGen.Lifts(3, 5).Sample(lifts =>
        {
            (int, int)[] ties = [.. from up in Enumerable.Range(0, 8) from down in Enumerable.Range(0, 8) where (up & down) == 0 && (up | down) != 0 select (up, down)];
            TieUpAnswer answer = new BranchAndBoundSearch().Solve(TieUpProblem.Countermarche(lifts, 3, 2));
            Assert.True(answer.Proved);
            Assert.Equal(BySets(ties, lifts, 2, lift => (lift, 7 & ~lift)), answer.Chosen.Length);
        }, iter: 20);

    [Fact]
    public void Ten_lifts_are_proved_within_the_usual_steps() =>
        FittingGen.Lifts(8, 10).Sample(lifts => Assert.True(new BranchAndBoundSearch().Solve(TieUpProblem.Union(lifts, 2)).Proved), iter: 100);

    [Fact]
    public void The_search_gives_the_same_answer_each_time() =>
        FittingGen.Lifts(6, 12).Sample(lifts =>
        {
            TieUpProblem problem = TieUpProblem.Union(lifts, 2);
            TieUpAnswer one = new BranchAndBoundSearch(500).Solve(problem), other = new BranchAndBoundSearch(500).Solve(problem);
            Assert.Equal(one.Chosen.AsEnumerable(), other.Chosen);
            Assert.Equal(one.Steps, other.Steps);
        }, iter: 30);

    [Fact]
    public void There_are_three_ways_to_tie_all_sheds_of_four_shafts_to_six_treadles()
    {
        // Counted by trying all sets of six treadles; two independent programs agree on 3.
        int[] lifts = [.. Enumerable.Range(1, 14)];
        int found = 0;
        foreach (int[] six in Choices([.. Enumerable.Range(1, 15)], 6))
        {
            if (lifts.All(l => six.Any(a => six.Any(b => (a | b) == l)))) found++;
        }

        Assert.Equal(3, found);
    }

    [Fact]
    public void Many_shafts_on_a_countermarche_are_answered_without_a_proof()
    {
        ShaftSet[] lifts = [.. Enumerable.Range(0, 12).Select(i => new ShaftSet((0x0FUL << i | 0x0FUL >> (12 - i)) & 0xFFF))];
        TieUpProblem problem = TieUpProblem.Countermarche(lifts, 12, 2);
        TieUpAnswer answer = new BranchAndBoundSearch(2_000).Solve(problem);
        Assert.False(problem.Complete);
        Assert.Equal(12, answer.Presses(problem).Length);
        Assert.InRange(answer.AtLeast, 1, answer.Chosen.Length);
    }

    [Fact]
    public void Very_many_ways_are_cut_short_and_never_called_proved()
    {
        // Past the limit of ways each lift keeps a share of them, its own treadle first.
        ShaftSet[] lifts = [.. Enumerable.Range(1, 255).Where(b => System.Numerics.BitOperations.PopCount((uint)b) > 3).Take(64).Select(b => new ShaftSet((ulong)b))];
        TieUpProblem problem = TieUpProblem.Union(lifts, 3);
        TieUpAnswer answer = new BranchAndBoundSearch(20).Solve(problem);
        Assert.Equal(lifts.Length, answer.Presses(problem).Length);
        Assert.All(Enumerable.Range(0, lifts.Length), l => Assert.Equal(lifts[l], problem.Candidates[problem.Direct(l)].Up));
        Assert.True(problem.Complete || !answer.Proved || answer.Chosen.Length == problem.FewestByCount);
    }

    [Fact]
    public void Sharing_among_three_feet_never_needs_more_than_among_two() =>
        FittingGen.Lifts(4, 10).Sample(lifts =>
        {
            int two = new BranchAndBoundSearch().Solve(TieUpProblem.Countermarche(lifts, 4, 2)).Chosen.Length;
            int three = new BranchAndBoundSearch().Solve(TieUpProblem.Countermarche(lifts, 4, 3)).Chosen.Length;
            Assert.InRange(three, 1, two);
        }, iter: 20);

    [Fact]
    public void A_lift_that_is_empty_or_comes_twice_is_a_slip_of_the_program()
    {
        Assert.Throws<ArgumentException>(() => TieUpProblem.Union([ShaftSet.None], 2));
        Assert.Throws<ArgumentException>(() => TieUpProblem.Union([ShaftSet.Of(1), ShaftSet.Of(1)], 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => TieUpProblem.Union([ShaftSet.Of(1)], 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new BranchAndBoundSearch(0).Solve(TieUpProblem.Union([ShaftSet.Of(1)], 2)));
    }

    // Smallest set of ties from which every lift is pressed with at most so many; for a countermarche the parts must not overlap.
    private static int BySets((int Up, int Down)[] ties, ShaftSet[] lifts, int feet, Func<int, (int Up, int Down)> wanted)
    {
        var goals = lifts.Select(l => wanted((int)l.Bits)).ToArray();
        for (int size = 1; ; size++)
        {
            foreach ((int Up, int Down)[] set in Choices(ties, size))
            {
                if (goals.All(g => Pressed(set, g, feet))) return size;
            }
        }
    }

    private static bool Pressed((int Up, int Down)[] set, (int Up, int Down) goal, int feet, int from = 0, int up = 0, int down = 0)
    {
        if ((up, down) == goal) return true;
        if (feet == 0) return false;
        for (int i = from; i < set.Length; i++)
        {
            (int Up, int Down) tie = set[i];
            if ((tie.Up & ~goal.Up) != 0 || (tie.Down & ~goal.Down) != 0) continue;
            if (goal.Down != 0 && ((tie.Up | tie.Down) & (up | down)) != 0) continue;
            if (Pressed(set, goal, feet - 1, i + 1, up | tie.Up, down | tie.Down)) return true;
        }

        return false;
    }

    private static IEnumerable<T[]> Choices<T>(T[] from, int size, int start = 0)
    {
        if (size == 0)
        {
            yield return [];
            yield break;
        }

        for (int i = start; i <= from.Length - size; i++)
        {
            foreach (T[] rest in Choices(from, size - 1, i + 1)) yield return [from[i], .. rest];
        }
    }
}
