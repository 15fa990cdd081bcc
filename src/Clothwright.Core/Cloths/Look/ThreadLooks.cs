using Clothwright.Core.Cloths.Geometry;
using Clothwright.Core.Cloths.Look.Sections;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Diameters;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Cloths.Look;

/// <summary>How the thread of a yarn lies in the cloth: pressed, twisted, plied.</summary>
public static class ThreadLooks
{
    // Turns per length as a twist factor, turns per metre × √tex ÷ 100; soft handweaving yarns. Common practice, no source.
    private const double SinglesFactor = 25;
    private const double PlyFactor = 22;
    private const double FilamentFactor = 4;

    /// <summary>The look of a thread of one yarn.</summary>
    /// <param name="yarn">The yarn.</param>
    /// <param name="strands">Strands lying side by side as one thread; 1 or more.</param>
    /// <param name="washed">Whether the cloth is washed, its yarns bloomed and pressed.</param>
    public static ThreadLook Of(Yarn yarn, int strands = 1, bool washed = true)
    {
        ArgumentNullException.ThrowIfNull(yarn);
        ArgumentOutOfRangeException.ThrowIfLessThan(strands, 1);
        double diameter = YarnDiameter.Of(yarn).Value.Metres;
        Lustre lustre = Lustres.Of(yarn);
        ThreadSection section = ThreadSection.FromHeight(diameter * Bloom(lustre, washed), Pressed(yarn, lustre, washed));
        double tex = yarn.LinearDensity.Value.Tex;
        bool plied = yarn.Construction == YarnConstruction.Spun;
        double turns = 100 * Factor(yarn.Construction) / Math.Sqrt(tex);

        // Plies turn against the twist of their singles (S over Z), and the fibres of a balanced yarn come to lie along it: half the slant is left.
        double slant = plied ? -0.5 * ThreadTwist.AngleRadians(diameter, turns) : ThreadTwist.AngleRadians(diameter, turns);
        return new ThreadLook(yarn.Colour, Length.FromMetres(section.Width * strands))
        {
            Height = Length.FromMetres(section.Height),
            Lustre = lustre,
            TwistRadians = lustre.IsPile ? 0 : slant,
            PlySpacing = plied && !lustre.IsPile && !lustre.IsMetal ? Length.FromMetres(1 / (2 * turns)) : Length.Zero,
        };
    }

    // Height of the section as a share of the diameter. Soft, untwisted and hairy yarns give way; washing lets them. Common practice, no source.
    private static double Pressed(Yarn yarn, Lustre lustre, bool washed)
    {
        double height = yarn.Construction switch
        {
            YarnConstruction.Ribbon => 0.35,
            YarnConstruction.Monofilament => lustre.IsMetal ? 0.45 : 0.95,
            YarnConstruction.Reeled or YarnConstruction.Filament => 0.62,
            YarnConstruction.Chenille => 0.75,
            YarnConstruction.Singles => 0.66,
            _ => 0.72 - 0.15 * lustre.Fuzz,
        };
        return washed ? height * 0.9 : Math.Min(1, height * 1.12);
    }

    // The diameter reckoned with is that of yarn pressed in a close cloth; with room it is thicker, hairy yarn most. Common practice, no source.
    private static double Bloom(Lustre lustre, bool washed) => (washed ? 1.15 : 1.03) * (1 + 0.25 * lustre.Fuzz);

    private static double Factor(YarnConstruction construction) => construction switch
    {
        YarnConstruction.Spun => PlyFactor,
        YarnConstruction.Singles => SinglesFactor,
        YarnConstruction.Boucle => PlyFactor,
        _ => FilamentFactor,
    };
}
