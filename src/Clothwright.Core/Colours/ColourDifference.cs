namespace Clothwright.Core.Colours;

/// <summary>How different two colours look.</summary>
public static class ColourDifference
{
    private const double TwentyFiveToTheSeventh = 6103515625;

    /// <summary>ΔE*76: straight distance in CIELAB.</summary>
    public static double Cie76(CieLab one, CieLab other) => Math.Sqrt(
        (one.L - other.L) * (one.L - other.L) + (one.A - other.A) * (one.A - other.A) + (one.B - other.B) * (one.B - other.B));

    /// <summary>ΔE00: CIEDE2000 (ISO/CIE 11664-6), all weights 1. Symmetric; about 1 is just seen.</summary>
    /// <remarks>The order of steps follows G. Sharma, W. Wu and E. Dalal, Color Research and Application 30 (2005) 21, from memory.</remarks>
    public static double Ciede2000(CieLab one, CieLab other)
    {
        double g = 0.5 * (1 - Saturating((one.Chroma + other.Chroma) / 2));
        double a1 = (1 + g) * one.A;
        double a2 = (1 + g) * other.A;
        double c1 = Math.Sqrt(a1 * a1 + one.B * one.B);
        double c2 = Math.Sqrt(a2 * a2 + other.B * other.B);
        double h1 = HueDegrees(a1, one.B);
        double h2 = HueDegrees(a2, other.B);
        bool grey = c1 * c2 == 0;

        double deltaL = other.L - one.L;
        double deltaC = c2 - c1;
        double deltaHue = grey ? 0 : Wrapped(h2 - h1);
        double deltaH = 2 * Math.Sqrt(c1 * c2) * Math.Sin(Radians(deltaHue / 2));

        double meanL = (one.L + other.L) / 2;
        double meanC = (c1 + c2) / 2;
        double meanHue = grey ? h1 + h2 : MeanHueDegrees(h1, h2);

        double t = 1
            - 0.17 * Math.Cos(Radians(meanHue - 30))
            + 0.24 * Math.Cos(Radians(2 * meanHue))
            + 0.32 * Math.Cos(Radians(3 * meanHue + 6))
            - 0.20 * Math.Cos(Radians(4 * meanHue - 63));
        double fromFifty = (meanL - 50) * (meanL - 50);
        double sl = 1 + 0.015 * fromFifty / Math.Sqrt(20 + fromFifty);
        double sc = 1 + 0.045 * meanC;
        double sh = 1 + 0.015 * meanC * t;
        double turn = 30 * Math.Exp(-((meanHue - 275) / 25) * ((meanHue - 275) / 25));
        double rt = -Math.Sin(Radians(2 * turn)) * 2 * Saturating(meanC);

        double l = deltaL / sl;
        double c = deltaC / sc;
        double h = deltaH / sh;
        return Math.Sqrt(l * l + c * c + h * h + rt * c * h);
    }

    private static double Saturating(double chroma)
    {
        double seventh = Math.Pow(chroma, 7);
        return Math.Sqrt(seventh / (seventh + TwentyFiveToTheSeventh));
    }

    private static double HueDegrees(double a, double b)
    {
        if (a == 0 && b == 0) return 0;
        double degrees = Math.Atan2(b, a) * 180 / Math.PI;
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private static double Wrapped(double degrees) => degrees > 180 ? degrees - 360 : degrees < -180 ? degrees + 360 : degrees;

    private static double MeanHueDegrees(double h1, double h2)
    {
        double sum = h1 + h2;
        if (Math.Abs(h1 - h2) <= 180) return sum / 2;
        return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
