namespace Clothwright.Core.Colours;

/// <summary>OKLab: an even space for averaging, grouping and gradients (B. Ottosson, 2020, from memory).</summary>
/// <param name="L">Lightness, 0 to 1.</param>
/// <param name="A">Green to red.</param>
/// <param name="B">Blue to yellow.</param>
public readonly record struct OkLab(double L, double A, double B)
{
    /// <summary>The OKLab of a light.</summary>
    public static OkLab From(LinearColour light)
    {
        double l = Math.Cbrt(0.4122214708 * light.Red + 0.5363325363 * light.Green + 0.0514459929 * light.Blue);
        double m = Math.Cbrt(0.2119034982 * light.Red + 0.6806995451 * light.Green + 0.1073969566 * light.Blue);
        double s = Math.Cbrt(0.0883024619 * light.Red + 0.2817188376 * light.Green + 0.6299787005 * light.Blue);
        return new OkLab(
            0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
            1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
            0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s);
    }

    /// <summary>Straight distance in OKLab.</summary>
    public double DistanceTo(OkLab other) => Math.Sqrt(
        (L - other.L) * (L - other.L) + (A - other.A) * (A - other.A) + (B - other.B) * (B - other.B));
}
