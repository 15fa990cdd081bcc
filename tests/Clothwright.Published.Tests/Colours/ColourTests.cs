using System.Globalization;
using Clothwright.Core.Colours;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Colours;

public class ColourTests
{
    private const string Table = "Tables/colours.md";

    private static TheoryData<IReadOnlyDictionary<string, string>> RowsOf(char letter) =>
        [.. MarkdownTable.Load(Table).Rows.Where(r => r["id"][0] == letter)];

    public static TheoryData<IReadOnlyDictionary<string, string>> Differences => RowsOf('S');

    public static TheoryData<IReadOnlyDictionary<string, string>> Transfers => RowsOf('T');

    public static TheoryData<IReadOnlyDictionary<string, string>> Spaces => RowsOf('L');

    public static TheoryData<IReadOnlyDictionary<string, string>> Pairs => RowsOf('D');

    public static TheoryData<IReadOnlyDictionary<string, string>> Visions => RowsOf('C');

    [Theory]
    [MemberData(nameof(Differences))]
    public void Ciede2000_agrees_with_the_published_pairs_in_both_orders(IReadOnlyDictionary<string, string> row)
    {
        CieLab one = Lab(row["lab 1"]);
        CieLab other = Lab(row["lab 2"]);
        double expected = Number(row["expected"]);
        Assert.Equal(expected, ColourDifference.Ciede2000(one, other), 0.0001);
        Assert.Equal(expected, ColourDifference.Ciede2000(other, one), 0.0001);
    }

    [Theory]
    [MemberData(nameof(Transfers))]
    public void The_srgb_transfer_function_is_that_of_the_standard(IReadOnlyDictionary<string, string> row)
    {
        double given = Number(row["in"]);
        double expected = Number(row["out"]);
        if (given > 1 || given == 0)
        {
            Assert.Equal(expected, LinearColour.From(new SrgbColour((byte)given, 0, 0)).Red, 1e-6);
        }
        else
        {
            Assert.Equal(expected, new LinearColour(given, 0, 0).ToSrgb().Red, 0.5);
        }
    }

    [Theory]
    [MemberData(nameof(Spaces))]
    public void Codes_convert_to_xyz_lab_and_oklab(IReadOnlyDictionary<string, string> row)
    {
        LinearColour light = LinearColour.From(SrgbColour.Parse(row["hex"]).Value);
        CieXyz xyz = CieXyz.From(light);
        CieLab lab = CieLab.From(light);
        OkLab ok = OkLab.From(light);
        Agree(row["xyz"], 1e-4, xyz.X, xyz.Y, xyz.Z);
        Agree(row["lab"], 0.01, lab.L, lab.A, lab.B);
        Agree(row["oklab"], 2e-4, ok.L, ok.A, ok.B);
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Pairs_of_colours_differ_as_computed_independently(IReadOnlyDictionary<string, string> row)
    {
        SrgbColour one = SrgbColour.Parse(row["one"]).Value;
        SrgbColour other = SrgbColour.Parse(row["other"]).Value;
        CieLab lab1 = CieLab.From(one);
        CieLab lab2 = CieLab.From(other);
        Assert.Equal(Number(row["difference 2000"]), ColourDifference.Ciede2000(lab1, lab2), 0.00051);
        Assert.Equal(Number(row["difference 76"]), ColourDifference.Cie76(lab1, lab2), 0.00051);
        Assert.Equal(Number(row["lightness"]), Math.Abs(lab1.L - lab2.L), 0.00051);
        Assert.Equal(Number(row["contrast"]), ContrastRatio.Of(one, other), 0.00051);
        Assert.Equal(Number(row["oklab"]), OkLab.From(LinearColour.From(one)).DistanceTo(OkLab.From(LinearColour.From(other))), 0.000051);
    }

    [Theory]
    [MemberData(nameof(Visions))]
    public void Other_eyes_see_the_colours_of_the_published_matrices(IReadOnlyDictionary<string, string> row)
    {
        ColourVision vision = Enum.Parse<ColourVision>(row["vision"], ignoreCase: true);
        Assert.Equal(
            row["seen"],
            ColourVisionSimulation.Seen(SrgbColour.Parse(row["colour"]).Value, vision, Number(row["severity"])).ToString());
    }

    private static void Agree(string expected, double tolerance, params double[] actual)
    {
        double[] values = [.. expected.Split(' ').Select(Number)];
        for (int i = 0; i < values.Length; i++) Assert.Equal(values[i], actual[i], tolerance);
    }

    private static CieLab Lab(string text)
    {
        double[] parts = [.. text.Split(' ').Select(Number)];
        return new CieLab(parts[0], parts[1], parts[2]);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
