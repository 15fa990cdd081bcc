namespace Clothwright.Drawing.Faces;

/// <summary>A picture of dots, packed as JPEG; it goes into a document as it is.</summary>
/// <param name="Bytes">The JPEG file, in sRGB.</param>
/// <param name="Width">Dots across.</param>
/// <param name="Height">Dots down.</param>
internal sealed record JpegPicture(byte[] Bytes, int Width, int Height);
