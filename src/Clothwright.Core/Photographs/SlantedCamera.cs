namespace Clothwright.Core.Photographs;

/// <summary>What a slanted camera does to a count that knows only a scale.</summary>
public static class SlantedCamera
{
    /// <summary>By how much threads seem closer than they are, along the slant: 1 ÷ cos of the slant, less 1.</summary>
    /// <param name="degrees">How far the camera looks past square; from 0 to below 90.</param>
    /// <exception cref="ArgumentOutOfRangeException">The slant is outside 0 to below 90.</exception>
    public static double CountErrorFraction(double degrees) => degrees is >= 0 and < 90
        ? 1 / Math.Cos(degrees * Math.PI / 180) - 1
        : throw new ArgumentOutOfRangeException(nameof(degrees), degrees, "A camera looks from 0 to below 90 degrees past square.");
}
