using Clothwright.Core.Photographs;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;
using Clothwright.TestKit.Photographs;

namespace Clothwright.Core.Tests.Photographs;

/// <summary>Counts held against swatches whose threads are known. The painter shares nothing with what reads its pictures.</summary>
public class ClothCounterTests
{
    // A weaver's own count under a glass is off by half a thread in twenty-five.
    private const double Right = 0.02;
    private const double Wrong = 0.05;

    private static readonly string[] Plain = ["10", "01"];
    private static readonly string[] Twill = ["1100", "0110", "0011", "1001"];

    private static SyntheticSwatch Swatch(string[] weave) => new()
    {
        Name = "swatch",
        EndsPerCentimetre = 9,
        PicksPerCentimetre = 7.5,
        Weave = [.. weave],
        PixelsPerMillimetre = 9,
        Side = 640,
        Noise = 0.01,
        Blur = 0.6,
        Jitter = 0.04,
        Seed = 11,
    };

    private static ClothCount Counted(SyntheticSwatch swatch, CountDetail? detail = null)
    {
        Photograph photograph = Photograph.FromRgba(swatch.Side, swatch.Side, SwatchPainter.Rgba(swatch));
        PhotoScale scale = PhotoScale.FromLength(Length.FromMillimetres(50), 50 * swatch.PixelsPerMillimetre);
        return ClothCounter.Count(photograph, scale, PhotoArea.MiddleOf(photograph), detail ?? CountDetail.Full).Value;
    }

    private static double EndsOff(ClothCount count, SyntheticSwatch swatch) => Math.Abs(count.Ends.Sett.Value.PerCentimetre / swatch.EndsPerCentimetre - 1);

    private static double PicksOff(ClothCount count, SyntheticSwatch swatch) => Math.Abs(count.Picks.Sett.Value.PerCentimetre / swatch.PicksPerCentimetre - 1);

    [Fact]
    public void Plain_weave_seen_square_on_is_counted_for_sure()
    {
        SyntheticSwatch swatch = Swatch(Plain);
        ClothCount count = Counted(swatch);
        Assert.InRange(EndsOff(count, swatch), 0, Right);
        Assert.InRange(PicksOff(count, swatch), 0, Right);
        Assert.Equal(Certainty.Sure, count.Certainty);
        Assert.Empty(count.Ends.Questions);
        Assert.Equal(57.6, count.Ends.ThreadsSeen, 1.5);
    }

    [Theory]
    [InlineData(-10)]
    [InlineData(10)]
    public void A_swatch_turned_ten_degrees_is_counted_and_its_turn_told(double degrees)
    {
        SyntheticSwatch swatch = Swatch(Twill) with { TurnDegrees = degrees };
        ClothCount count = Counted(swatch);
        Assert.InRange(EndsOff(count, swatch), 0, Right);
        Assert.InRange(PicksOff(count, swatch), 0, Right);
        // Angles are looked for by half degrees; a turn against the clock is below 0.
        Assert.Equal(-degrees, count.Ends.AngleDegrees, 0.75);
        Assert.Equal(-degrees, count.Picks.AngleDegrees, 0.75);
    }

    [Fact]
    public void Uneven_light_and_a_slanted_camera_do_not_mislead()
    {
        SyntheticSwatch swatch = Swatch(Twill) with { UnevenLight = 0.6, TiltDegrees = 5, TiltTowardsDegrees = 30 };
        ClothCount count = Counted(swatch);
        Assert.InRange(EndsOff(count, swatch), 0, Right);
        Assert.InRange(PicksOff(count, swatch), 0, Right);
    }

    [Fact]
    public void Less_work_gives_the_same_count_of_a_clear_swatch()
    {
        SyntheticSwatch swatch = Swatch(Plain);
        ClothCount count = Counted(swatch, CountDetail.Quick);
        Assert.InRange(EndsOff(count, swatch), 0, Right);
        Assert.InRange(PicksOff(count, swatch), 0, Right);
    }

    [Fact]
    public void The_grid_lies_on_the_gaps()
    {
        SyntheticSwatch swatch = Swatch(Plain) with { Jitter = 0 };
        ClothCount count = Counted(swatch);
        var camera = new CameraView(swatch);
        foreach (PhotoPoint gap in count.Ends.Gaps[count.Ends.Gaps.Length / 2])
        {
            // Gaps lie half-way between the ends, whose middles are whole spacings from the middle of the cloth.
            double place = camera.OnCloth(gap.X, gap.Y).X * swatch.EndsPerCentimetre / 10 - 0.5;
            Assert.Equal(0, place - Math.Round(place), 0.25);
        }
    }

    [Fact]
    public void A_dark_and_a_pale_colour_in_turn_are_asked_about()
    {
        SyntheticSwatch swatch = Swatch(Plain) with { WarpColours = [(0.03, 0.04, 0.07), (0.75, 0.75, 0.72)] };
        ClothCount count = Counted(swatch);
        Assert.NotEqual(Certainty.Sure, count.Ends.Certainty);
        Assert.Contains(count.Ends.Questions, q => q.Kind is CountQuestionKind.ColoursInTurn or CountQuestionKind.AnotherCount or CountQuestionKind.EverySecondGap);
    }

    [Fact]
    public void Threads_two_pixels_wide_are_too_fine()
    {
        SyntheticSwatch swatch = Swatch(Plain) with { EndsPerCentimetre = 30, PicksPerCentimetre = 28, Side = 400 };
        Assert.Contains(Counted(swatch).Ends.Questions, q => q.Kind == CountQuestionKind.TooFine);
    }

    [Fact]
    public void A_picture_without_threads_is_never_called_sure()
    {
        var chance = new SeededChance(4);
        byte[] noise = new byte[320 * 320 * 4];
        for (int i = 0; i < noise.Length; i++) noise[i] = (byte)(128 + 30 * chance.Normal());
        Photograph photograph = Photograph.FromRgba(320, 320, noise);
        Parsed<ClothCount> count = ClothCounter.Count(photograph, PhotoScale.FromLength(Length.FromMillimetres(10), 80), PhotoArea.MiddleOf(photograph), CountDetail.Full);
        Assert.True(!count.Succeeded || count.Value.Certainty == Certainty.CannotTell, "Noise was taken for cloth.");
    }

    [Fact]
    public void An_area_outside_the_picture_is_refused()
    {
        Photograph photograph = Photograph.FromRgba(200, 200, new byte[200 * 200 * 4]);
        PhotoScale scale = PhotoScale.FromLength(Length.FromMillimetres(10), 80);
        Assert.Equal("area", ClothCounter.Count(photograph, scale, new PhotoArea(new PhotoPoint(10, 10), 150), CountDetail.Full).Problem!.Where);
        Assert.Equal("area", ClothCounter.Count(photograph, scale, new PhotoArea(new PhotoPoint(100, 100), 60), CountDetail.Full).Problem!.Where);
    }

    [Fact]
    public void A_count_given_by_the_weaver_settles_on_the_threads()
    {
        SyntheticSwatch swatch = Swatch(Plain);
        Photograph photograph = Photograph.FromRgba(swatch.Side, swatch.Side, SwatchPainter.Rgba(swatch));
        PhotoScale scale = PhotoScale.FromLength(Length.FromMillimetres(50), 50 * swatch.PixelsPerMillimetre);
        PhotoArea area = PhotoArea.MiddleOf(photograph);
        ThreadSetCount nudged = ClothCounter.Recount(photograph, scale, area, CountDetail.Full, Sett.FromPerCentimetre(9.3), 0, picks: false).Value;
        Assert.Equal(9, nudged.Sett.Value.PerCentimetre, 0.18);
        Assert.Equal(Certainty.FairlySure, nudged.Certainty);
        Assert.Equal("sett", ClothCounter.Recount(photograph, scale, area, CountDetail.Full, Sett.FromPerCentimetre(200), 0, picks: false).Problem!.Where);
    }

    [Fact]
    public void A_warp_that_runs_across_exchanges_ends_and_picks()
    {
        ClothCount count = Counted(Swatch(Plain));
        Assert.Same(count.Ends, count.Turned().Picks);
    }

    [Theory]
    [InlineData(200)]
    [InlineData(201)]
    [InlineData(202)]
    [InlineData(203)]
    [InlineData(204)]
    public void A_swatch_of_the_series_is_never_wrong_and_called_sure(int number)
    {
        foreach (SyntheticSwatch swatch in (SyntheticSwatch[])[SwatchSeries.Swatch(number), SwatchSeries.InTurn(number)])
        {
            ClothCount count = Counted(swatch);
            Assert.False(count.Ends.Certainty == Certainty.Sure && EndsOff(count, swatch) > Wrong, $"{swatch.Name}: {count.Ends.Sett.Value.PerCentimetre:0.00} ends, {swatch.EndsPerCentimetre:0.00} are there.");
            Assert.False(count.Picks.Certainty == Certainty.Sure && PicksOff(count, swatch) > Wrong, $"{swatch.Name}: {count.Picks.Sett.Value.PerCentimetre:0.00} picks, {swatch.PicksPerCentimetre:0.00} are there.");
        }
    }
}
