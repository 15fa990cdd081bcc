namespace Clothwright.Core.Photographs.Pictures;

/// <summary>A square of a photograph that shows nothing but cloth.</summary>
/// <param name="Middle">Its middle.</param>
/// <param name="SidePixels">Its side, pixels.</param>
public readonly record struct PhotoArea(PhotoPoint Middle, double SidePixels)
{
    /// <summary>Nine tenths of the largest square in the middle of a photograph.</summary>
    /// <param name="photograph">The photograph.</param>
    public static PhotoArea MiddleOf(Photograph photograph)
    {
        ArgumentNullException.ThrowIfNull(photograph);
        return new PhotoArea(photograph.Middle, 0.9 * Math.Min(photograph.Width, photograph.Height));
    }
}
