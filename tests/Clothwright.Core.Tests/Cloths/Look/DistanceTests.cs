using System.Numerics;
using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Colours;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Tests.Cloths.Look;

public class DistanceTests
{
    private const double GapLight = 0.62;

    public static TheoryData<string, string, string> Cloths()
    {
        var data = new TheoryData<string, string, string>();
        foreach (string weave in new[] { "10/01", "1100/0110/0011/1001", "1110/0111/1011/1101", "10000/00100/00001/01000/00010" })
        {
            foreach (string lamp in new[] { "window", "along warp", "along weft" })
            {
                data.Add(weave, "silk", lamp);
                data.Add(weave, "cotton", lamp);
            }
        }

        return data;
    }

    // Near and far mean: at most 1 ΔE76, which nobody sees. From afar no thread hides the corner of its neighbour's slope; under a single low
    // lamp the slopes of reeled silk are what shines: there the limit holds in ΔE00, which weighs such strong colours as the eye does.
    [Theory]
    [MemberData(nameof(Cloths))]
    public void Near_and_far_have_the_same_mean_colour(string weave, string fibre, string lamp)
    {
        Lustre lustre = Still(fibre == "silk" ? Lustres.SilkReeled : Lustres.Cotton);
        LookDescription cloth = PaintedCloth.Of(PaintedCloth.Weave(weave), lustre, lustre, twist: fibre == "silk" ? 0.05 : -0.2);
        Lighting lighting = lamp switch
        {
            "along warp" => new Lighting(Direction.Unit(0, 1, 1), Direction.OffTheFace),
            "along weft" => new Lighting(Direction.Unit(1, 0, 1), Direction.OffTheFace),
            _ => Lighting.Window,
        };
        int repeat = cloth.Weave.Ends;
        LinearColour near = PaintedCloth.Mean(PaintedCloth.Paint(cloth, 12, 12 * repeat, 12 * repeat, lighting));
        LinearColour far = PaintedCloth.Mean(PaintedCloth.Paint(cloth, 1, 4 * repeat, 4 * repeat, lighting));
        double difference = fibre == "silk" && lamp != "window"
            ? ColourDifference.Ciede2000(PaintedCloth.Lab(near), PaintedCloth.Lab(far))
            : PaintedCloth.Difference(near, far);
        Assert.True(difference <= 1, $"{weave} in {fibre}, {lamp}: near {PaintedCloth.Lab(near)}, far {PaintedCloth.Lab(far)}, {difference:0.00} apart.");
    }

    // The far view in the light of the window is the area-weighted mix of the yarns' light.
    [Theory]
    [InlineData("10/01", 0.9)]
    [InlineData("1100/0110/0011/1001", 0.9)]
    [InlineData("1110/0111/1011/1101", 0.7)]
    [InlineData("10000/00100/00001/01000/00010", 0.8)]
    [InlineData("110100/011010/001101/100110/010011/101001", 1.0)]
    public void From_afar_a_cloth_has_the_mix_of_its_colours_by_area(string weave, double width)
    {
        foreach (Lustre lustre in new[] { Lustres.SilkReeled, Lustres.Wool, Lustres.Linen, Lustres.Viscose })
        {
            LookDescription cloth = PaintedCloth.Of(PaintedCloth.Weave(weave), lustre, lustre, width);
            int repeat = cloth.Weave.Ends;
            LinearColour far = PaintedCloth.Mean(PaintedCloth.Paint(cloth, 0.5, 6 * repeat, 6 * repeat));
            double cover = width * HairCover(lustre, width);
            var fused = FusedColours.Of(
                cloth.Weave, _ => LinearColour.From(PaintedCloth.Plum), _ => LinearColour.From(PaintedCloth.Rosehip), cover, cover, PaintedCloth.Paper * GapLight);
            double difference = ColourDifference.Ciede2000(PaintedCloth.Lab(far), PaintedCloth.Lab(fused.Face.Colour));
            Assert.True(difference <= 1, $"{weave} in {lustre.Name}: far {far}, mix {fused.Face.Colour}, {difference:0.00} apart.");
        }
    }

    [Fact]
    public void The_colour_picked_for_a_yarn_comes_out_in_cloth_of_one_yarn()
    {
        foreach (Lustre lustre in Lustres.All)
        {
            LookDescription cloth = PaintedCloth.Of(PaintedCloth.Weave("10/01"), lustre, lustre, 1.6) with
            {
                Picks = [PaintedCloth.Thread(PaintedCloth.Plum, lustre, 1.6)],
            };
            LinearColour far = PaintedCloth.Mean(PaintedCloth.Paint(cloth, 0.5, 8, 8));
            double difference = ColourDifference.Ciede2000(PaintedCloth.Lab(far), CieLab.From(PaintedCloth.Plum));

            // Hairs and metal let a little of what lies behind, or of the lamp, through.
            Assert.True(difference <= (lustre.Fuzz > 0.2 || lustre.IsMetal ? 5 : 1.5), $"{lustre.Name}: {difference:0.00} apart.");
        }
    }

    [Fact]
    public void The_change_from_near_to_far_is_gradual()
    {
        LookDescription cloth = PaintedCloth.Of(PaintedCloth.Weave("1100/0110/0011/1001"), Lustres.Cotton, Lustres.Cotton);
        LinearColour before = PaintedCloth.Mean(PaintedCloth.Paint(cloth, 1.0, 40, 40));
        foreach (double perMillimetre in new[] { 1.2, 1.4, 1.6, 1.8, 2.0, 2.2 })
        {
            var pixels = (int)(40 * perMillimetre);
            LinearColour next = PaintedCloth.Mean(PaintedCloth.Paint(cloth, perMillimetre, pixels, pixels));
            Assert.True(PaintedCloth.Difference(before, next) <= 1.5, $"{perMillimetre} pixels a millimetre: {PaintedCloth.Difference(before, next):0.00}");
            before = next;
        }
    }

    // Unevenness moves single threads; means are compared without it.
    private static Lustre Still(Lustre lustre) => lustre with { Slub = 0 };

    // Share of a thread's width that its hairs leave covered where they reach past its place.
    private static double HairCover(Lustre lustre, double width)
    {
        if (lustre.Fuzz == 0) return 1;
        double soft = 0.7 * lustre.Fuzz;
        double place = 1 / width;
        double sum = 0;
        const int Steps = 1000;
        for (int i = 0; i < Steps; i++)
        {
            double v = (i + 0.5) / Steps * place;
            double t = Math.Clamp((v - 1 + soft) / (2 * soft), 0, 1);
            sum += 1 - t * t * (3 - 2 * t);
        }

        return sum / Steps * place;
    }
}
