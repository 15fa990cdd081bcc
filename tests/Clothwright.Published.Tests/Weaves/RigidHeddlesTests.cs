using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.RigidHeddles;
using Clothwright.Core.Weaves.Structures;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Weaves;

/// <summary>Tables/rigid-heddles.md.</summary>
public class RigidHeddlesTests
{
    private static readonly MarkdownTable Table = MarkdownTable.Load("Tables/rigid-heddles.md");

    private static readonly Sett Number = Sett.FromPerInch(10);

    public static IEnumerable<object[]> Rows(string kind) =>
        Table.Rows.Where(r => r["id"].StartsWith(kind, StringComparison.Ordinal)).Select(r => new object[] { r["inputs"], r["expected"] });

    [Theory]
    [MemberData(nameof(Rows), "sheds")]
    public void Heddles_make_as_many_sheds_as_published(string heddles, string expected)
    {
        RigidHeddleShed[] all = [.. RigidHeddleShed.All(int.Parse(heddles))];

        Assert.Equal(expected, $"{all.Count(s => s.IsClear)} {all.Count(s => s.Levels == 3)}");
        // Each set in exactly one way.
        Assert.Equal(all.Count(s => s.IsClear), all.Where(s => s.IsClear).Select(s => s.Raised).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Rows), "raise")]
    public void Groups_are_raised_as_published(string groups, string expected) =>
        Assert.Equal(expected, Positions(RigidHeddleShed.Raising(2, ShaftSet.Of(Numbers(groups)))));

    [Theory]
    [MemberData(nameof(Rows), "sett")]
    public void The_greatest_sett_is_as_published(string inputs, string expected)
    {
        string[] parts = inputs.Split(';', StringSplitOptions.TrimEntries);
        Sett greatest = RigidHeddleSett.Greatest(new RigidHeddle("ten", Number, 4), int.Parse(parts[0]), Numbers(parts[1])).Value;
        double times = greatest.PerMetre / Number.PerMetre;

        // A pitch of one eye and one slot holds 2 × sett / N ends, one of them in the eye.
        Assert.Equal(expected, $"{Math.Round(times, 9)} ; 1 and {Math.Round(2 * times, 9) - 1}");
    }

    [Theory]
    [MemberData(nameof(Rows), "shift")]
    public void Ends_shift_sideways_no_further_than_published(string inputs, string expected)
    {
        string[] parts = inputs.Split(';', StringSplitOptions.TrimEntries);
        int[] groups = Numbers(parts[1]);
        int[] ends = [.. Enumerable.Range(0, 300).Where(e => groups[e % groups.Length] == 1)];
        EyePlacement placement = EyePlacement.Of(ends, Number * double.Parse(parts[2]), Number);

        Assert.Equal(double.Parse(expected), placement.GreatestShift.Metres * Number.PerMetre / 2, 6);
    }

    [Theory]
    [MemberData(nameof(Rows), "plan")]
    public void Drafts_are_laid_out_as_published(string inputs, string expected)
    {
        string[] parts = inputs.Split(';', StringSplitOptions.TrimEntries);
        string[] wanted = expected.Split(';', StringSplitOptions.TrimEntries);
        int ends = wanted[0].Split(' ').Length;
        Draft draft = WeaveCatalogue.Make(parts[1], new WeaveSize(ends, wanted[1].Split('/').Length)).Value.Draft;
        RigidHeddlePlan plan = RigidHeddleFit.Of(draft, int.Parse(parts[0]));

        Assert.Equal(wanted[0], string.Join(' ', plan.Groups));
        Assert.Equal(wanted[1], string.Join(" / ", plan.Picks.Select(p => Positions(p.Shed!))));
    }

    private static string Positions(RigidHeddleShed shed) => string.Join(", ", shed.Positions.Select(p => p.ToString().ToLowerInvariant()));

    private static int[] Numbers(string text) => [.. text.Split(' ').Select(int.Parse)];
}
