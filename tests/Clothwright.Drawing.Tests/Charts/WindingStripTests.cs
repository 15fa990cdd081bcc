using Clothwright.Core.Publishing;
using Clothwright.Drawing.Charts;
using Clothwright.Drawing.Figures;

namespace Clothwright.Drawing.Tests.Charts;

public class WindingStripTests
{
    [Fact]
    public void Stripes_are_as_wide_as_their_share_and_ends_are_numbered()
    {
        Figure strip = WindingStrip.Draw([new WindingTurn(1, 30, "tide", Pictures.TideBlue), new WindingTurn(31, 90, "sand", Pictures.DrySand)], 480);
        Box[] stripes = [.. strip.Marks.OfType<BoxesMark>().Where(m => m.Name == "yarn").Select(m => m.Boxes.Single())];

        Assert.Equal([120f, 360f], stripes.Select(s => s.Width));
        Assert.Equal(["10", "20", "30", "40", "50", "60", "70", "80", "90", "100", "110", "120"], strip.Marks.OfType<LabelMark>().Select(m => m.Text));
        Assert.Equal(480, strip.Marks.OfType<LabelMark>().Last().X);
    }
}
