namespace Clothwright.Core.Colours;

/// <summary>How large a thing looks.</summary>
public static class VisualAngle
{
    /// <summary>Angle under which a size is seen: 2 atan(size ÷ 2 distance), in degrees.</summary>
    /// <param name="sizeMetres">Size across the line of sight, in metres.</param>
    /// <param name="distanceMetres">Distance of the eye, in metres, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is below 0 or the distance not above 0.</exception>
    public static double Degrees(double sizeMetres, double distanceMetres)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(sizeMetres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(distanceMetres);
        return double.RadiansToDegrees(2 * Math.Atan(sizeMetres / (2 * distanceMetres)));
    }
}
