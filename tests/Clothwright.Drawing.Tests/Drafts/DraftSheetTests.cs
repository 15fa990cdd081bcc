using System.Collections.Immutable;
using Clothwright.Core.Weaves;
using Clothwright.Drawing.Drafts;
using Clothwright.Drawing.Figures;
using SkiaSharp;

namespace Clothwright.Drawing.Tests.Drafts;

public class DraftSheetTests
{
    [Fact]
    public void A_draft_too_large_for_a_page_is_cut_into_sheets_that_fit_and_show_every_crossing_once()
    {
        Draft large = Pictures.Twill(150, 170);
        ImmutableArray<Figure> sheets = DraftSheet.Pages(large, DraftColours.None, new DraftStyle { BracketRepeats = false }, 480, 650);

        Assert.True(sheets.Length > 1);
        Assert.All(sheets, s => Assert.True(s.Width <= 480.5f && s.Height <= 650.5f, $"a sheet of {s.Width} × {s.Height} points"));
        Assert.Equal(150 * 170, sheets.Sum(s => s.Marks.OfType<BoxesMark>().Where(m => m.Name is "warp" or "weft").Sum(m => m.Boxes.Length)));
    }

    [Fact]
    public void Nothing_of_a_draft_lies_outside_its_figure()
    {
        foreach (DraftOrientation orientation in Enum.GetValues<DraftOrientation>())
        {
            var colours = new DraftColours([Pictures.TideBlue], [Pictures.Saltmarsh]);
            Figure figure = DraftSheet.Whole(Pictures.Twill(186, 402), colours, new DraftStyle { Orientation = orientation });

            Assert.All(figure.Marks.OfType<BoxesMark>().SelectMany(m => m.Boxes), b => Assert.True(
                b.X >= -0.01 && b.Y >= -0.01 && b.X + b.Width <= figure.Width + 0.01 && b.Y + b.Height <= figure.Height + 0.01, $"{orientation}: {b}"));
            Assert.All(figure.Marks.OfType<LabelMark>(), label =>
            {
                float width = new Clothwright.Drawing.Fonts.TextRun(label.Text, label.Style.Face, label.Style.Size).Width;
                float left = label.Align switch { LabelAlign.Start => label.X, LabelAlign.Middle => label.X - width / 2, _ => label.X - width };
                Assert.True(left >= -0.5 && left + width <= figure.Width + 0.5 && label.Baseline - label.Style.Size * 0.75 >= -0.5 && label.Baseline <= figure.Height + 0.5, $"{orientation}: {label.Name} {label.Text}");
            });
        }
    }

    [Fact]
    public void A_picture_of_a_draft_shows_warp_dark_and_weft_light()
    {
        using var stream = new MemoryStream();
        Draft plain = Pictures.Twill(2, 2) with { Threading = Pictures.Straight(2, 2), TieUp = [ShaftSet.Of(1), ShaftSet.Of(2)], Treadling = Pictures.Straight(2, 2) };
        Figure figure = DraftSheet.Whole(plain, DraftColours.None, new DraftStyle());
        DraftPng.Write(plain, stream, dotsPerInch: 288);
        using SKBitmap picture = SKBitmap.Decode(stream.ToArray());

        Box warp = figure.Marks.OfType<BoxesMark>().Single(m => m.Name == "warp").Boxes[0];
        Box weft = figure.Marks.OfType<BoxesMark>().Single(m => m.Name == "weft").Boxes[0];
        Assert.Equal(Palette.Woad, Pictures.At(picture, (int)((warp.X + warp.Width / 2) * 4), (int)((warp.Y + warp.Height / 2) * 4)));
        Assert.Equal(Palette.Linen, Pictures.At(picture, (int)((weft.X + weft.Width / 2) * 4), (int)((weft.Y + weft.Height / 2) * 4)));
    }
}
