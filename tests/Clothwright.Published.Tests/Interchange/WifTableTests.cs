using System.Globalization;
using Clothwright.Interchange.Wif;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Interchange;

/// <summary>Units and colours of the interchange standard, by the table.</summary>
public sealed class WifTableTests
{
    private const string Table = "Tables/interchange.md";

    public static TheoryData<string> Rows(string prefix)
    {
        var data = new TheoryData<string>();
        foreach (var row in MarkdownTable.Load(Table).Rows.Where(r => r["id"].StartsWith(prefix, StringComparison.Ordinal))) data.Add(row["id"]);
        return data;
    }

    [Theory]
    [MemberData(nameof(Rows), "u")]
    public void A_spacing_has_its_length(string id) => Check(
        id, row => WifLength.ToLength(row["value"], row.TextOrNull("units") is { } units ? Enum.Parse<WifUnits>(units) : null).Millimetres);

    [Theory]
    [MemberData(nameof(Rows), "c")]
    public void A_part_of_a_colour_has_its_code(string id) => Check(
        id, row => new WifColourRange(row["low"], row["high"]).ToCode(row["value"]));

    private static void Check(string id, Func<CheckRow, double> compute)
    {
        CheckRow row = CheckRow.Load(Table, id);
        double expected = double.Parse(row.Expected[0], CultureInfo.InvariantCulture);
        double tolerance = double.Parse(row.Tolerances[0].Split(' ')[0], CultureInfo.InvariantCulture);
        Assert.Equal(expected, compute(row), tolerance);
    }
}
