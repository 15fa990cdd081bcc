using System.Collections.Immutable;

namespace Clothwright.TestKit.Photographs;

/// <summary>A seeded series of swatches as a weaver with a telephone would photograph them.</summary>
public static class SwatchSeries
{
    private static readonly (string Name, string[] Rows)[] Weaves =
    [
        ("plain", ["10", "01"]),
        ("plain", ["10", "01"]),
        ("2/2 twill", ["1100", "0110", "0011", "1001"]),
        ("3/1 twill", ["1110", "0111", "1011", "1101"]),
        ("5-end satin", ["10000", "00100", "00001", "01000", "00010"]),
        ("basket", ["1100", "1100", "0011", "0011"]),
        ("1/2 twill", ["100", "010", "001"]),
    ];

    private static readonly (double, double, double)[] Albedos =
    [
        (0.62, 0.58, 0.48), (0.05, 0.2, 0.19), (0.45, 0.1, 0.02), (0.1, 0.03, 0.24), (0.75, 0.75, 0.72), (0.47, 0.37, 0.04), (0.03, 0.04, 0.07), (0.3, 0.3, 0.3),
    ];

    /// <summary>One swatch of the series.</summary>
    /// <param name="number">Which one; the same number is always the same swatch.</param>
    public static SyntheticSwatch Swatch(int number)
    {
        var chance = new SeededChance((ulong)number * 7919 + 17);
        (string name, string[] rows) = Weaves[chance.Below(Weaves.Length)];
        double ends = Math.Exp(chance.Between(Math.Log(4), Math.Log(20)));
        double picks = ends * Math.Exp(chance.Between(-0.45, 0.45));
        double pixelsPerThread = chance.Between(6, 20);
        var warp = Colours(chance, out string warpName);
        var weft = chance.Next() < 0.6 ? warp : Colours(chance, out _);
        return new SyntheticSwatch
        {
            Name = $"{number} {name}, {warpName}",
            EndsPerCentimetre = ends,
            PicksPerCentimetre = picks,
            Weave = [.. rows],
            WarpColours = warp,
            WeftColours = weft,
            WarpCover = chance.Between(0.65, 0.98),
            WeftCover = chance.Between(0.65, 0.98),
            Jitter = chance.Between(0, 0.08),
            Hairs = chance.Next() < 0.4 ? chance.Between(0, 0.5) : 0,
            PlyTurns = chance.Next() < 0.3 ? 0 : chance.Between(0.3, 1.4),
            TurnDegrees = chance.Between(-10, 10),
            SkewDegrees = chance.Between(-2, 2),
            TiltDegrees = chance.Between(0, 5),
            TiltTowardsDegrees = chance.Between(0, 360),
            DistanceMillimetres = chance.Between(200, 400),
            PixelsPerMillimetre = pixelsPerThread * ends / 10,
            Side = 800,
            Blur = chance.Between(0, 1.5),
            Noise = chance.Between(0, 0.03),
            UnevenLight = chance.Between(0, 0.6),
            LightFromDegrees = chance.Between(0, 360),
            Seed = (ulong)number,
        };
    }

    /// <summary>One swatch of a harder series: ends and picks of two colours in turn.</summary>
    /// <param name="number">Which one; the same number is always the same swatch.</param>
    public static SyntheticSwatch InTurn(int number)
    {
        var chance = new SeededChance((ulong)number * 104729 + 5);
        SyntheticSwatch swatch = Swatch(number);
        return swatch with
        {
            Name = swatch.Name.Split(',')[0] + ", colours in turn",
            WarpColours = Two(chance),
            WeftColours = Two(chance),
        };
    }

    private static ImmutableArray<(double, double, double)> Two(SeededChance chance)
    {
        int first = chance.Below(Albedos.Length);
        int second = (first + 1 + chance.Below(Albedos.Length - 1)) % Albedos.Length;
        return [Albedos[first], Albedos[second]];
    }

    private static ImmutableArray<(double, double, double)> Colours(SeededChance chance, out string name)
    {
        (double, double, double) first = Albedos[chance.Below(Albedos.Length)];
        (double, double, double) second = Albedos[chance.Below(Albedos.Length)];
        double kind = chance.Next();
        name = kind < 0.85 ? "one colour" : kind < 0.96 ? "stripes of four" : "alternate colours";
        return kind < 0.85 ? [first] : kind < 0.96 ? [first, first, first, first, second, second, second, second] : [first, second];
    }
}
