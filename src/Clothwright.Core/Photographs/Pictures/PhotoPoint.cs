namespace Clothwright.Core.Photographs.Pictures;

/// <summary>A place in a photograph.</summary>
/// <param name="X">Pixels from the left edge.</param>
/// <param name="Y">Pixels from the top edge.</param>
public readonly record struct PhotoPoint(double X, double Y)
{
    /// <summary>How far another place is, in pixels.</summary>
    /// <param name="other">The other place.</param>
    public double PixelsTo(PhotoPoint other) => Math.Sqrt((X - other.X) * (X - other.X) + (Y - other.Y) * (Y - other.Y));
}
