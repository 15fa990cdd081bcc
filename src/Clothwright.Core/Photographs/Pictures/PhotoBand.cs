namespace Clothwright.Core.Photographs.Pictures;

/// <summary>A band along a rod on which yarn is wound: it shows nothing but wraps.</summary>
/// <param name="From">Where the band begins, in the middle of the rod.</param>
/// <param name="To">Where it ends, in the middle of the rod.</param>
/// <param name="DepthPixels">How wide the band is, across the rod, pixels.</param>
public readonly record struct PhotoBand(PhotoPoint From, PhotoPoint To, double DepthPixels);
