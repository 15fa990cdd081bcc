using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;
using Clothwright.Drawing.Charts;
using Clothwright.Drawing.Figures;

namespace Clothwright.Drawing.Tests.Charts;

public class SettScaleTests
{
    private static SettScaleBlock Scale { get; } = new(
        "drape",
        Sett.FromPerCentimetre(6),
        Sett.FromPerCentimetre(9),
        Sett.FromPerCentimetre(7.5),
        Sett.FromPerInch(20),
        [new("10-dent, 2 a dent", Sett.FromPerInch(20)) { IsChosen = true }, new("12-dent, 1-2-2 a dent", Sett.FromPerInch(20)) { MarksLikely = true }],
        [new("Ashenhurst", Sett.FromPerCentimetre(12))]);

    private static Box Only(Figure figure, string name) => figure.Marks.OfType<BoxesMark>().Single(m => m.Name == name).Boxes.Single();

    private static float Middle(Box box) => box.X + box.Width / 2;

    [Fact]
    public void Marks_stand_at_their_setts_in_proportion()
    {
        Figure figure = SettScale.Draw(Scale, 480);
        Box serves = Only(figure, "serves");
        float perEnd = serves.Width / 3;

        Assert.Equal(serves.X + 1.5f * perEnd, Middle(Only(figure, "advised")), 0.01);
        Assert.Equal(serves.X + 6 * perEnd, Middle(Only(figure, "limit")), 0.01);
        Assert.Equal(serves.X + (20 / 2.54f - 6) * perEnd, Middle(Only(figure, "reed")), 0.01); // 20 to the inch of 2.54 cm
    }

    [Fact]
    public void A_reed_that_may_leave_marks_differs_in_shape_and_in_words()
    {
        Figure figure = SettScale.Draw(Scale, 480);

        Assert.Single(figure.Marks, m => m.Name == "reed-with-marks");
        Assert.Contains(figure.Marks.OfType<LabelMark>(), m => m.Text == "12-dent, 1-2-2 a dent; may mark");
        Assert.Contains(figure.Marks.OfType<LabelMark>(), m => m.Text == "10-dent, 2 a dent (woven)");
    }

    [Fact]
    public void Nothing_stands_outside_the_chart()
    {
        Figure figure = SettScale.Draw(Scale with { Limits = [.. Scale.Limits, new("far", Sett.FromPerCentimetre(90))] }, 480);

        Assert.All(figure.Marks.OfType<BoxesMark>().SelectMany(m => m.Boxes), b => Assert.True(b.X >= 0 && b.X + b.Width <= 480 && b.Y >= 0 && b.Y + b.Height <= figure.Height));
        Assert.All(figure.Marks.OfType<LabelMark>(), l => Assert.InRange(l.X, 0, 480));
    }

    [Fact]
    public void The_chart_is_told_in_words()
    {
        string words = SettScale.InWords(Scale);

        Assert.Contains("advised 7.5 per cm, 19.1 per inch", words, StringComparison.Ordinal); // 7.5 × 2.54 = 19.05
        Assert.Contains("Closest by Ashenhurst: 12.0 per cm, 30.5 per inch.", words, StringComparison.Ordinal);
        Assert.Contains("12-dent, 1-2-2 a dent: 7.87 per cm, 20.0 per inch, marks likely.", words, StringComparison.Ordinal);
    }
}
