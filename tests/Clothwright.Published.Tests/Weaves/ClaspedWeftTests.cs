using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Structures;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Weaves;

/// <summary>Tables/clasped-weft.md.</summary>
public class ClaspedWeftTests
{
    public static IEnumerable<object[]> Rows =>
        MarkdownTable.Load("Tables/clasped-weft.md").Rows.Select(r => new object[] { r["width cm"], r["joins cm"], r["left cm"], r["right cm"] });

    [Theory]
    [MemberData(nameof(Rows))]
    public void Each_yarn_goes_to_the_join_and_back(string width, string joins, string left, string right)
    {
        ClaspedWeft plan = ClaspedWeft.Of(Centimetres(width), [.. joins.Split(' ').Select(Centimetres)]).Value;

        // 9 places: sums of doubles.
        Assert.Equal(double.Parse(left), plan.LeftYarn.Value.Centimetres, 9);
        Assert.Equal(double.Parse(right), plan.RightYarn.Value.Centimetres, 9);
    }

    private static Length Centimetres(string text) => Length.FromCentimetres(double.Parse(text));
}
