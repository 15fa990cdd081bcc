using Clothwright.Drawing.Charts;
using Clothwright.Drawing.Figures;

namespace Clothwright.Drawing.Tests.Charts;

public class MeasureBarTests
{
    [Theory]
    [InlineData("bar-cm", 283.4646)] // 10 cm ÷ 2.54 cm to the inch × 72 points to the inch
    [InlineData("bar-in", 288)] // 4 in × 72 points to the inch
    public void The_bar_has_its_true_length(string name, double points)
    {
        Box bar = MeasureBar.Draw().Marks.OfType<BoxesMark>().Single(m => m.Name == name).Boxes.Single();

        Assert.Equal(points, bar.Width, 0.001); // a thousandth of a point is a third of a micrometre
    }
}
