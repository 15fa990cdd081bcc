using Clothwright.Core.Cloths.Geometry;
using CsCheck;

namespace Clothwright.Core.Tests.Cloths;

public class PeirceGeometryProperties
{
    private static readonly Gen<double> Share = Gen.Double[0.02, 0.98];

    // p and h as Peirce wrote them, from modular length and angle.
    private static double Pitch(double l, double sum, double angle) => (l - sum * angle) * Math.Cos(angle) + sum * Math.Sin(angle);

    private static double Height(double l, double sum, double angle) => (l - sum * angle) * Math.Sin(angle) + sum * (1 - Math.Cos(angle));

    [Fact]
    public void The_closed_form_solves_Peirces_equations() =>
        Gen.Select(Gen.Double[0.1, 5], Share, Gen.Double[1, 6]).Sample((sum, share, open) =>
        {
            double height = share * sum;
            double pitch = open * PeirceGeometry.ShortestPitch(sum, height);
            double angle = PeirceGeometry.AngleRadians(pitch, sum, height);
            double length = PeirceGeometry.ModularLength(pitch, sum, height);
            Assert.Equal(pitch, Pitch(length, sum, angle), 1e-6 * sum);
            Assert.Equal(height, Height(length, sum, angle), 1e-6 * sum);
            Assert.True(length >= pitch);
        });

    [Fact]
    public void Crimp_goes_to_nothing_as_the_threads_part() =>
        Gen.Select(Share, Gen.Double[1.1, 3]).Sample((share, factor) =>
        {
            double pitch = PeirceGeometry.ShortestPitch(1, share);
            double before = PeirceGeometry.Crimp(pitch, 1, share);
            for (int i = 0; i < 60; i++)
            {
                pitch *= factor;
                double crimp = PeirceGeometry.Crimp(pitch, 1, share);
                Assert.True(crimp <= before + 1e-12);
                before = crimp;
            }

            Assert.InRange(before, -1e-12, 1e-3);
        });

    [Fact]
    public void A_thread_of_no_crimp_height_lies_straight() =>
        Gen.Double[0.01, 20].Sample(pitch => Assert.Equal(0, PeirceGeometry.Crimp(pitch, 1, 0), 1e-9));

    [Fact]
    public void Crimp_grows_with_its_height() =>
        Gen.Select(Gen.Double[1, 5], Gen.Double[0.01, 0.9], Gen.Double[0.01, 0.09]).Sample((pitch, height, more) =>
            Assert.True(PeirceGeometry.Crimp(pitch, 1, height + more) > PeirceGeometry.Crimp(pitch, 1, height)));

    [Fact]
    public void Greatest_height_and_shortest_pitch_undo_each_other() =>
        Gen.Double[0, 1].Sample(height => Assert.Equal(height, PeirceGeometry.GreatestHeight(PeirceGeometry.ShortestPitch(1, height), 1), 1e-9));

    [Fact]
    public void The_approximation_undoes_itself() =>
        Gen.Select(Gen.Double[0.1, 9], Gen.Double[0, 0.4]).Sample((pitch, crimp) =>
            Assert.Equal(crimp, PeirceGeometry.ApproximateCrimp(pitch, PeirceGeometry.ApproximateHeight(pitch, crimp)), 1e-9));

    [Fact]
    public void Exchange_keeps_both_yarn_lengths_and_shares_out_the_whole_height() =>
        Gen.Select(Gen.Double[0.3, 0.7], Gen.Double[1.0, 2], Gen.Double[1.0, 2], Gen.Double[0.97, 1.04]).Sample((share, open1, open2, draw) =>
        {
            double p2 = open1 * PeirceGeometry.ShortestPitch(1, share);
            double p1 = open2 * PeirceGeometry.ShortestPitch(1, 1 - share);
            double l1 = PeirceGeometry.ModularLength(p2, 1, share);
            double l2 = PeirceGeometry.ModularLength(p1, 1, 1 - share);
            if (PeirceGeometry.Exchange(1, l1, l2, p2 * draw) is not { } after) return;
            Assert.Equal(1, after.OwnHeight + after.OtherHeight, 1e-9);
            Assert.Equal(l1, PeirceGeometry.ModularLength(p2 * draw, 1, after.OwnHeight), 1e-6);
            Assert.Equal(l2, PeirceGeometry.ModularLength(after.OtherPitch, 1, after.OtherHeight), 1e-6);
            if (draw > 1) Assert.True(after.OwnHeight < share && after.OtherPitch < p1);
        });

    [Fact]
    public void Exchange_by_nothing_changes_nothing()
    {
        double l = PeirceGeometry.ModularLength(1.2, 1, 0.5);
        CrimpExchange same = PeirceGeometry.Exchange(1, l, l, 1.2)!.Value;
        Assert.Equal(0.5, same.OwnHeight, 1e-9);
        Assert.Equal(1.2, same.OtherPitch, 1e-9);
    }

    [Fact]
    public void Exchange_stops_when_a_system_is_straight_or_jammed()
    {
        double l = PeirceGeometry.ModularLength(1, 1, 0.5);
        Assert.Null(PeirceGeometry.Exchange(1, l, l, l * 1.001));
        Assert.Null(PeirceGeometry.Exchange(1, l, l, 0.5));
        // Drawn nearly straight the warp leaves the weft more height than its length can bend to.
        Assert.Null(PeirceGeometry.Exchange(1, l, l, l * 0.9999));
    }

    [Fact]
    public void A_pressed_thread_keeps_its_area() =>
        Gen.Select(Gen.Double[0.1, 3], Gen.Double[1, 5]).Sample((d, flattening) =>
        {
            ThreadSection section = ThreadSection.FromFlattening(d, flattening);
            double area = section.Excess * section.Height + Math.PI / 4 * section.Height * section.Height;
            Assert.Equal(Math.PI / 4 * d * d, area, 1e-9);
            Assert.Equal(flattening, section.Width / section.Height, 1e-9);
            ThreadSection again = ThreadSection.FromHeight(d, section.Height / d);
            Assert.Equal(section.Width, again.Width, 1e-9);
        });

    [Fact]
    public void A_section_higher_than_wide_is_a_slip_of_the_program()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ThreadSection.FromFlattening(1, 0.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => ThreadSection.FromHeight(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => ThreadSection.FromHeight(1, 1.1));
    }

    [Fact]
    public void Race_track_of_round_threads_is_the_circle_and_plain_weave_is_Peirces_cloth() =>
        Gen.Select(Gen.Double[0.2, 2], Gen.Double[0.2, 2], Gen.Double[1.1, 4], Share).Sample((d1, d2, open, share) =>
        {
            double sum = d1 + d2;
            double pitch = open * sum;
            WeaveGeometry cloth = new(ThreadSection.FromFlattening(d1, 1), ThreadSection.FromFlattening(d2, 1), pitch, pitch, 1, 1);
            double height = cloth.WarpHeight(share);
            Assert.Equal(share * sum, height, 1e-9);
            Assert.Equal(PeirceGeometry.Crimp(pitch, sum, height), cloth.WarpCrimp(height), 1e-9);
            Assert.Equal(PeirceGeometry.Crimp(pitch, sum, sum - height), cloth.WeftCrimp(sum - height), 1e-9);
            Assert.True(cloth.Thickness(height) >= sum);
        });
}
