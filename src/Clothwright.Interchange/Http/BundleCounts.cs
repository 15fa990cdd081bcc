namespace Clothwright.Interchange.Http;

/// <summary>What was brought in with a packed studio.</summary>
/// <param name="Worksheets">Worksheets, those put away too.</param>
/// <param name="Saves">Saves in the histories of all worksheets.</param>
/// <param name="Yarns">Yarns of the shelf.</param>
/// <param name="Swatches">Swatch records.</param>
/// <param name="Sittings">Entries of the weaving log.</param>
/// <param name="Photos">Photos of yarns.</param>
/// <param name="Reservations">Yarns set aside for worksheets.</param>
public sealed record BundleCounts(int Worksheets, int Saves, int Yarns, int Swatches, int Sittings, int Photos = 0, int Reservations = 0);
