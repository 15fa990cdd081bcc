using System.Collections.Immutable;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;
using Clothwright.Drawing.Charts;
using Clothwright.Drawing.Figures;

namespace Clothwright.Drawing.Tests.Charts;

public class WarpStripTests
{
    [Fact]
    public void Parts_lie_from_front_to_back_in_proportion_and_fill_the_width()
    {
        Figure strip = WarpStrip.Draw(
            [new("scarf", WarpPartUse.Piece, Length.FromCentimetres(150)), new("behind", WarpPartUse.LoomWaste, Length.FromCentimetres(50))], 400);
        Box[] parts = [.. strip.Marks.OfType<BoxesMark>().Where(m => m.Name == "part").Select(m => m.Boxes.Single())];

        Assert.Equal(0, parts[0].X);
        Assert.Equal(parts[0].Width, parts[1].X);
        Assert.Equal(400, parts[1].X + parts[1].Width, 2);
        Assert.Equal(3, parts[0].Width / parts[1].Width, 0.2);
    }

    [Fact]
    public void A_short_part_stays_wide_enough_for_its_letter()
    {
        ImmutableArray<WarpPart> parts = [.. Enumerable.Range(0, 30).Select(i => new WarpPart("gap", WarpPartUse.Fringe, Length.FromCentimetres(i % 2 == 0 ? 0 : 200)))];
        Figure strip = WarpStrip.Draw(parts, 480);

        Assert.All(strip.Marks.OfType<BoxesMark>(), m => Assert.True(m.Boxes[0].Width >= 6.9));
        Assert.Equal("AD", strip.Marks.OfType<LabelMark>().Last().Text);
    }

    [Fact]
    public void Every_use_but_cloth_and_header_has_a_pattern_beside_its_colour()
    {
        foreach (WarpPartUse use in Enum.GetValues<WarpPartUse>())
        {
            Figure strip = WarpStrip.Draw([new WarpPart("part", use, Length.FromCentimetres(10))], 300);

            Assert.Equal(use is not (WarpPartUse.Piece or WarpPartUse.Header), strip.Marks.Any(m => m.Name == "pattern"));
        }
    }
}
