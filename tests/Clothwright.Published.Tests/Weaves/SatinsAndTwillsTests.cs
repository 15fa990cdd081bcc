using Clothwright.Core.Weaves.Structures;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Weaves;

/// <summary>Tables/satins-and-twills.md.</summary>
public class SatinsAndTwillsTests
{
    private static readonly MarkdownTable Table = MarkdownTable.Load("Tables/satins-and-twills.md");

    public static IEnumerable<object[]> Rows => Table.Rows.Select(r => new object[] { r["id"], r["inputs"], r["expected"] });

    [Theory]
    [MemberData(nameof(Rows))]
    public void Steps_orders_and_numbers_are_as_published(string id, string inputs, string expected)
    {
        int[] numbers = [.. inputs.Split(' ').Select(int.Parse)];
        int n = numbers[0];
        string found = id[..id.IndexOf('-', StringComparison.Ordinal)] switch
        {
            "steps" => Listed(SatinSteps.UpToMirror(n)),
            "alike" => Listed(SatinSteps.UpToMirror(n).Where(s => SatinSteps.IsIsonemal(n, s))),
            "classes" => Listed(SatinSteps.UpToMirrorAndTurn(n)),
            "order" => Listed(Order(Satin.Of(n, numbers[1], SatinFace.Weft))),
            "irregular" => $"{IrregularSatin.Orders(n).Count()}",
            "twills" => $"{EveryTwill.On(n).Length}",
            "floats" => ByFloat(n, expected),
            _ => "no such row",
        };

        Assert.Equal(expected, found);
    }

    private static string Listed(IEnumerable<int> numbers) => numbers.Any() ? string.Join(' ', numbers) : "none";

    private static IEnumerable<int> Order(Weave satin)
    {
        var cloth = satin.Draft.Drawdown();
        return Enumerable.Range(0, cloth.Picks).Select(p => Enumerable.Range(0, cloth.Ends).Single(e => cloth[p, e]) + 1);
    }

    // Only the lengths the table names: for 12 it gives some of them.
    private static string ByFloat(int n, string expected)
    {
        HashSet<string> named = [.. expected.Split(' ').Select(e => e.Split(':')[0])];
        return string.Join(' ', EveryTwill.On(n).GroupBy(t => t.LongestFloat).OrderBy(g => g.Key).Where(g => named.Contains($"{g.Key}")).Select(g => $"{g.Key}:{g.Count()}"));
    }
}
