using System.Globalization;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Composing;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;

namespace Clothwright.Core.Tests.Publishing;

public class TickTextTests
{
    [Fact]
    public void Threading_is_ticked_by_whole_repeats_up_to_the_last()
    {
        PlanResult plan = Plans.Scarves();
        TickRow row = Assert.Single(TickText.Threading(plan.Ends));
        int[] ends = [.. row.Marks.Select(m => int.Parse(m, CultureInfo.InvariantCulture))];

        Assert.True(ends.Length <= 48);
        Assert.Equal(ends.Order(), ends);
        Assert.All(ends, e => Assert.Equal(0, (e - 1) % plan.Ends.RepeatEnds)); // one floating selvedge before the first repeat
        Assert.Equal(1 + plan.Ends.Repeats * plan.Ends.RepeatEnds, ends[^1]);
    }

    [Fact]
    public void A_single_repeat_needs_no_ticks() => Assert.Empty(TickText.Threading(Plans.Scarves().Ends with { Repeats = 1 }));

    [Theory]
    [InlineData(UnitStyle.Metric)]
    [InlineData(UnitStyle.Customary)]
    public void Weaving_is_ticked_by_length_and_picks_up_to_the_whole(UnitStyle units)
    {
        PiecePlan piece = Plans.Scarves().Pieces[0];
        TickRow row = Assert.Single(TickText.Weaving(piece, units));
        double whole = units == UnitStyle.Metric ? piece.LengthUnderTension.Value.Centimetres : piece.LengthUnderTension.Value.Inches;
        string[] last = row.Marks[^1].Split(" · ");
        string[] first = row.Marks[0].Split(" · ");

        Assert.Equal(Math.Round(whole, 1), double.Parse(last[0], CultureInfo.InvariantCulture));
        Assert.Equal(piece.Picks.Value.Count, int.Parse(last[1], CultureInfo.InvariantCulture));
        double share = double.Parse(first[0], CultureInfo.InvariantCulture) / whole;
        Assert.Equal(share * piece.Picks.Value.Count, double.Parse(first[1], CultureInfo.InvariantCulture), 0.5); // whole picks
        Assert.True(row.Marks.Length <= 37);
    }

    [Fact]
    public void Pieces_alike_have_a_row_each()
    {
        PlanResult plan = Plans.Scarves(w => w with { Pieces = Plans.Only(Plans.Scarf("scarf", "marsh"), p => p with { Count = 3 }) });

        Assert.Equal(["Scarf 1:", "Scarf 2:", "Scarf 3:"], TickText.Weaving(plan.Pieces[0], UnitStyle.Metric).Select(r => r.Caption[^8..]));
    }
}
