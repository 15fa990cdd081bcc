namespace Clothwright.Interchange.Http;

/// <summary>A photo of a yarn; the picture itself has an address of its own and is always a JPEG.</summary>
/// <param name="Id">Its id.</param>
/// <param name="YarnId">The yarn.</param>
/// <param name="AddedAt">When it was added.</param>
/// <param name="WidthPixels">Its width.</param>
/// <param name="HeightPixels">Its height.</param>
public sealed record YarnPhoto(string Id, string YarnId, DateTimeOffset AddedAt, int WidthPixels, int HeightPixels)
{
    /// <summary>The most photos of one yarn.</summary>
    public const int MostOfOneYarn = 12;
}
