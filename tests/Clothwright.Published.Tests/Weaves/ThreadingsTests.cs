using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Weaves;

/// <summary>Tables/threadings.md.</summary>
public class ThreadingsTests
{
    private static readonly MarkdownTable Table = MarkdownTable.Load("Tables/threadings.md");

    public static IEnumerable<object[]> Rows => Table.Rows.Select(r => new object[] { r["id"], r["inputs"], r["expected"] });

    [Theory]
    [MemberData(nameof(Rows))]
    public void Threadings_follow_their_rule(string id, string inputs, string expected)
    {
        string found = id switch
        {
            "name-1" or "name-3" => Shafts(NameDraft.Letters(inputs)),
            "name-2" => WithFloat(NameDraft.Threading(inputs)),
            "name-4" => $"{NameDraft.Threading(inputs).Length} {NeighbouringPairs.LongestFloat(NameDraft.Threading(inputs))}",
            "name-5" => $"{Shafts(NameDraft.Letters(inputs))} {NeighbouringPairs.LongestFloat(NameDraft.Threading(inputs))?.ToString() ?? "endless"}",
            "overshot-1" => Shafts(Overshot.Threading(BlockRun.Parse(inputs.Split(' ')[0], 4, int.Parse(inputs.Split(' ')[1])).Value)),
            "overshot-2" => $"{(NeighbouringPairs.KeepsParity(Ends(inputs)) ? "parity" : "no parity")} {NeighbouringPairs.LongestFloat(Ends(inputs))}",
            "skip-1" => string.Join(' ', Opposing(SkipTwill.Of(TwillBase.Parse(inputs).Value))),
            _ when id.StartsWith("crackle", StringComparison.Ordinal) => $"{(Crackle.IsValid(Ends(inputs)) ? "valid" : "invalid")} {NeighbouringPairs.LongestFloat(Ends(inputs))}",
            _ when id.StartsWith("join", StringComparison.Ordinal) => Shafts(Crackle.Threading(BlockRun.Parse(inputs, 4).Value, out _)),
            _ when id.StartsWith("network", StringComparison.Ordinal) => Network(inputs),
            _ => "no such row",
        };

        Assert.Equal(id.StartsWith("join", StringComparison.Ordinal) ? expected.Replace(" ", "", StringComparison.Ordinal) : expected, found);
    }

    [Fact]
    public void Lifts_of_whole_residue_classes_weave_the_initial_whatever_the_line()
    {
        // Initial 1 2 3 4 with lifts 15, 26, 37, 48 is 1/3 twill throughout (two programs, computed).
        int[] line = [1, 4, 2, 8, 8, 3, 11, 5, 6, 1, 1, 7];
        Weave network = NetworkDraft.Of([1, 2, 3, 4], line, 8, [ShaftSet.Of(1, 5), ShaftSet.Of(2, 6), ShaftSet.Of(3, 7), ShaftSet.Of(4, 8)]);

        Assert.Equal(Twill.Of(TwillBase.Of(1, 3)).Sized(new WeaveSize(12, 4)).Draft.Drawdown(), network.Draft.Drawdown());
    }

    private static string Network(string inputs)
    {
        string[] parts = inputs.Split(';', StringSplitOptions.TrimEntries);
        return Shafts(NetworkThreading.Along([.. parts[0].Select(c => c - '0' + 1)], 8, [.. parts[1].Split(' ').Select(l => int.Parse(l) + 1)]));
    }

    private static IEnumerable<int> Opposing(Weave weave)
    {
        Drawdown cloth = weave.Draft.Drawdown();
        return Enumerable.Range(0, cloth.Ends)
            .Where(e => Enumerable.Range(0, cloth.Picks).All(p => cloth[p, e] != cloth[p, (e + cloth.Ends - 1) % cloth.Ends]))
            .Select(e => e + 1);
    }

    private static string WithFloat(IReadOnlyList<int> threading) => $"{Shafts(threading)} {NeighbouringPairs.LongestFloat(threading)}";

    private static string Shafts(IEnumerable<int> threading) => string.Concat(threading);

    private static int[] Ends(string text) => [.. text.Where(char.IsAsciiDigit).Select(c => c - '0')];
}
