using System.Collections.Immutable;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Publishing.Composing;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;

namespace Clothwright.Core.Tests.Publishing;

public class ReedTextTests
{
    [Fact]
    public void The_scale_holds_the_range_every_reed_and_every_limit()
    {
        PlanResult plan = Plans.Scarves(w => w with { Reeds = [.. w.Reeds, new Clothwright.Core.Looms.Reed("12-dent", Sett.FromPerInch(12))] });
        SettScaleBlock scale = ReedText.Of(plan).OfType<SettScaleBlock>().Single();

        Assert.Equal((plan.SettAdvice.EndsRange.Low, plan.SettAdvice.EndsRange.High), (scale.Low, scale.High));
        Assert.Equal(plan.SettAdvice.Limits.Select(l => (l.Method, l.Ends.Value)), scale.Limits.Select(l => (l.Name, l.Sett)));
        Assert.Equal(plan.Sett.Value.PerMetre, scale.Chosen.PerMetre, 9);
        SettStop woven = Assert.Single(scale.Stops, s => s.IsChosen);
        Assert.Equal("10-dent, 2 a dent", woven.Name);
        Assert.Equal(plan.Sett.Value.PerMetre, woven.Sett.PerMetre, 9);
        Assert.Contains(scale.Stops, s => s.Name.StartsWith("12-dent, ", StringComparison.Ordinal));
    }

    [Fact]
    public void Dents_are_counted_from_the_left_and_begun_half_of_them_left_of_the_middle()
    {
        PlanResult plan = Plans.Scarves();
        ImmutableArray<HandoutBlock> blocks = ReedText.Of(plan);
        TableBlock dents = blocks.OfType<TableBlock>().Single();
        int last = int.Parse(dents.Rows[^1].Cells[0], System.Globalization.CultureInfo.InvariantCulture);

        Assert.Equal((plan.Ends.Total.Value.Count - 2) / 2 + 2, last); // two ends a dent, and a dent for each floating selvedge
        Assert.Contains(blocks.OfType<ParagraphBlock>(), p => p.Text == $"The reed, 10-dent: {last} dents in use. Begin {last / 2} dents to the left of its middle.");
    }

    [Fact]
    public void Cloth_in_two_layers_is_shown_in_one()
    {
        PlanResult plan = Plans.Scarves(w => w with
        {
            LoomId = "rigid",
            Weave = new WeaveDecision.Named("plain weave"),
            Sett = Sett.FromPerInch(10),
            FloatingSelvedges = false,
            Pieces = Plans.Only(Plans.Scarf("blanket", "marsh"), p => p with { Make = PieceMake.DoubleWidth, Width = Length.FromCentimetres(100) }),
        });
        ImmutableArray<HandoutBlock> blocks = ReedText.Of(plan);

        Assert.Equal(10, blocks.OfType<SettScaleBlock>().Single().Chosen.PerInch, 6);
        Assert.Empty(blocks.OfType<TableBlock>());
        Assert.Contains("All setts are of one layer; on the loom there are two.", blocks.OfType<ParagraphBlock>().First().Text, StringComparison.Ordinal);
    }
}
