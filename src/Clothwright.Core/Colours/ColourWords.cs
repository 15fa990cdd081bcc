namespace Clothwright.Core.Colours;

/// <summary>A colour in words: how light, how strong, and the hue. The words are ordinary ones; their bounds are our judgement, in OKLab.</summary>
public static class ColourWords
{
    // Each hue ends where the next begins, in degrees of OKLab hue.
    private static readonly (double To, string Word)[] Hues =
    [
        (10, "purplish red"), (42, "red"), (78, "orange"), (112, "yellow"), (137, "yellow green"), (165, "green"), (222, "blue green"), (272, "blue"),
        (306, "violet"), (340, "purple"), (361, "purplish red"),
    ];

    /// <summary>The colour in words, for example <c>dark blue green</c>.</summary>
    /// <param name="colour">The colour.</param>
    public static string Of(LinearColour colour)
    {
        OkLab lab = OkLab.From(colour);
        double strength = Math.Sqrt(lab.A * lab.A + lab.B * lab.B);
        if (strength < 0.018) return Grey(lab.L);
        double degrees = double.RadiansToDegrees(Math.Atan2(lab.B, lab.A));
        double hue = degrees < 0 ? degrees + 360 : degrees;
        string name = Hue(hue, lab.L, strength);
        string light = lab.L switch
        {
            < 0.33 => "very dark ",
            < 0.47 => "dark ",
            < 0.76 => "",
            < 0.90 => name is "yellow" or "yellow green" || strength > 0.17 ? "" : "light ",
            _ => strength > 0.11 ? "" : "pale ",
        };
        string strong = strength switch { < 0.05 => "greyish ", > 0.2 => "vivid ", _ => "" };
        return $"{light}{strong}{name}";
    }

    private static string Grey(double lightness) => lightness switch
    {
        < 0.22 => "black",
        < 0.42 => "dark grey",
        < 0.70 => "grey",
        < 0.93 => "light grey",
        _ => "white",
    };

    // Brown, olive and pink are names of dark orange, dark yellow and light red.
    private static string Hue(double hue, double lightness, double strength) => hue switch
    {
        > 30 and < 85 when lightness < 0.62 && strength < 0.15 => "brown",
        >= 85 and < 122 when lightness < 0.66 => "olive",
        > 340 or < 35 when lightness > 0.72 => "pink",
        _ => Hues.First(h => hue < h.To).Word,
    };
}
