namespace Clothwright.Drawing.Photos;

/// <summary>A photo as it is kept: upright, of a modest size, without what the camera noted of time and place.</summary>
/// <param name="Jpeg">The picture.</param>
/// <param name="WidthPixels">Its width.</param>
/// <param name="HeightPixels">Its height.</param>
public sealed record StoredPhoto(byte[] Jpeg, int WidthPixels, int HeightPixels);
