using Clothwright.Core.Quantities;

namespace Clothwright.Core.Cloths.Look.Distances;

/// <summary>How far from a cloth its threads run together to an even colour.</summary>
/// <remarks>Threads that differ in lightness: one thread in one minute of arc, a 20/20 eye. Threads that differ in hue alone: 11.4 cycles in a degree (K. T. Mullen, 1985).</remarks>
/// <param name="Lightness">For threads that differ in lightness.</param>
/// <param name="Hue">For threads of one lightness that differ in hue alone.</param>
/// <param name="Checkerboard">For plain weave with warp and weft of two lightnesses, whose figure is finer than its threads.</param>
public readonly record struct FusingDistance(Length Lightness, Length Hue, Length Checkerboard)
{
    private const double Minute = Math.PI / 180 / 60;

    // Two threads make a cycle: 30 cycles a degree for lightness against 11 to 12 for hue.
    private const double HueShare = 11.5 / 30;

    /// <summary>Distances for a spacing of threads.</summary>
    /// <param name="spacing">From thread to thread.</param>
    public static FusingDistance Of(Length spacing)
    {
        double lightness = spacing.Metres / Math.Tan(Minute);
        return new FusingDistance(
            Length.FromMetres(lightness),
            Length.FromMetres(lightness * HueShare),
            Length.FromMetres(lightness / Math.Sqrt(2)));
    }
}
