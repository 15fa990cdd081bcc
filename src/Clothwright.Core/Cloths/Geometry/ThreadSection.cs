namespace Clothwright.Core.Cloths.Geometry;

/// <summary>The section of a thread in the cloth: a race-track (half circles joined by straights), or a circle.</summary>
/// <remarks>Kemp 1958, from memory; the area is that of the round thread.</remarks>
/// <param name="Width">Width a, in the plane of the cloth.</param>
/// <param name="Height">Height b, through the cloth.</param>
public readonly record struct ThreadSection(double Width, double Height)
{
    /// <summary>A thread pressed to a proportion of width to height.</summary>
    /// <param name="diameter">Diameter of the round thread.</param>
    /// <param name="flattening">Width ÷ height, 1 or more; 1 leaves it round.</param>
    /// <exception cref="ArgumentOutOfRangeException">The flattening is below 1.</exception>
    public static ThreadSection FromFlattening(double diameter, double flattening)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(flattening, 1);
        double height = diameter * Math.Sqrt(Math.PI / 4 / (Math.PI / 4 + flattening - 1));
        return new ThreadSection(flattening * height, height);
    }

    /// <summary>A thread pressed to a share of its height.</summary>
    /// <param name="diameter">Diameter of the round thread.</param>
    /// <param name="share">Height ÷ diameter, above 0, at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is 0 or less, or above 1.</exception>
    public static ThreadSection FromHeight(double diameter, double share)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(share);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(share, 1);
        double height = diameter * share;
        return new ThreadSection(height + Math.PI / 4 * (diameter * diameter - height * height) / height, height);
    }

    /// <summary>How much wider than high.</summary>
    public double Excess => Width - Height;
}
