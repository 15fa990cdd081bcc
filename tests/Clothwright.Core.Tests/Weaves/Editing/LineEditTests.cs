using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Editing;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Editing;

public class LineEditTests
{
    private static readonly ThreadSpan Middle = new(1, 3);

    [Fact]
    public void Each_change_does_to_the_marked_threads_what_it_says()
    {
        Assert.Equal("adcbef", Changed(new LastFirst(Middle)));
        Assert.Equal("abcdcbef", Changed(new BackAgain(Middle)));
        Assert.Equal("abcdbcdbcdef", Changed(new OnceMore(Middle, 2)));
        Assert.Equal("adbcef", Changed(new MovedOn(Middle, 1)));
        Assert.Equal("acdbef", Changed(new MovedOn(Middle, -1)));
        Assert.Equal("aef", Changed(new TakenOut(Middle)));
        Assert.Equal("cdabef", Changed(new ChangedPlaces(new ThreadSpan(0, 2))));
    }

    [Fact]
    public void Turned_round_twice_all_is_as_before() =>
        Lines.Sample((line, span) => Assert.Equal(line.AsEnumerable(), new LastFirst(span).Apply(new LastFirst(span).Apply(line))), iter: 300, seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Moved_on_and_back_all_is_as_before() =>
        Gen.Select(Lines, Gen.Int[-40, 40]).Sample(
            (marked, by) => Assert.Equal(marked.Item1.AsEnumerable(), new MovedOn(marked.Item2, -by).Apply(new MovedOn(marked.Item2, by).Apply(marked.Item1))),
            iter: 300,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Mirrored_threads_read_the_same_from_both_ends() =>
        Lines.Sample(
            (line, span) =>
            {
                ImmutableArray<int> mirrored = new BackAgain(span).Apply(line);
                int[] marked = [.. mirrored.Skip(span.First).Take(2 * span.Count - 1)];
                Assert.Equal(marked, marked.Reverse());
                Assert.Equal(line.Length + span.Count - 1, mirrored.Length);
                Assert.Equal(line.Skip(span.End), mirrored.Skip(span.First + 2 * span.Count - 1));
            },
            iter: 300,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void Repeated_threads_taken_out_again_leave_the_line_as_before() =>
        Lines.Sample(
            (line, span) => Assert.Equal(line.AsEnumerable(), new TakenOut(new ThreadSpan(span.End, span.Count * 3)).Apply(new OnceMore(span, 3).Apply(line))),
            iter: 300,
            seed: "0N0XIzNsQ0O2");

    [Fact]
    public void A_line_beyond_the_limit_is_refused_before_room_is_made_for_it()
    {
        var edit = new OnceMore(Middle, int.MaxValue);
        InputProblem problem = Assert.Throws<InputProblemException>(() => Changed(edit)).Problem;
        Assert.Contains("6442450947 threads of 6", problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Threads_without_as_many_behind_them_cannot_change_places()
    {
        InputProblem problem = Assert.Throws<InputProblemException>(() => Changed(new ChangedPlaces(new ThreadSpan(2, 3)))).Problem;
        Assert.Equal("3 threads are to change places with those behind them, and 1 follow.", problem.What);
        Assert.Equal("Mark at most 2 threads from thread 3 on.", problem.Mend);
    }

    [Fact]
    public void Threads_that_are_not_there_are_a_slip()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Changed(new LastFirst(new ThreadSpan(4, 3))));
        Assert.Throws<ArgumentOutOfRangeException>(() => Changed(new LastFirst(new ThreadSpan(-1, 3))));
        Assert.Throws<ArgumentOutOfRangeException>(() => Changed(new TakenOut(new ThreadSpan(1, 0))));
        Assert.Throws<ArgumentOutOfRangeException>(() => Changed(new OnceMore(Middle, 0)));
    }

    [Fact]
    public void Marks_are_set_from_either_side_and_cut_to_the_line()
    {
        Assert.Equal(new ThreadSpan(2, 4), ThreadSpan.Between(5, 2));
        Assert.Equal(new ThreadSpan(2, 4), ThreadSpan.Between(2, 5));
        Assert.True(ThreadSpan.Between(2, 5).Contains(5));
        Assert.False(ThreadSpan.Between(2, 5).Contains(6));
        Assert.Equal(new ThreadSpan(2, 2), ThreadSpan.Between(2, 5).Within(4));
        Assert.Equal(new ThreadSpan(3, 1), ThreadSpan.Between(8, 9).Within(4));
    }

    private static Gen<(ImmutableArray<int>, ThreadSpan)> Lines { get; } =
        Gen.Select(Gen.Int[1, 20], Gen.Int[0, 19], Gen.Int[1, 20]).Select((threads, first, count) =>
            (ImmutableArray.CreateRange(Enumerable.Range(0, threads)), new ThreadSpan(first, count).Within(threads)));

    private static string Changed(LineEdit edit) => string.Concat(edit.Apply<char>([.. "abcdef"]));
}
