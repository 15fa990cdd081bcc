using Clothwright.Core.Photographs;
using Clothwright.Core.Photographs.Pictures;

namespace Clothwright.Published.Tests.Photographs;

/// <summary>Geometry of photographs by the table.</summary>
public class PhotographTableTests
{
    private const string Table = "Tables/photographs.md";

    [Theory]
    [InlineData("G02")]
    [InlineData("G03")]
    [InlineData("G05")]
    public void A_slanted_camera_makes_threads_seem_closer(string id)
    {
        CheckRow row = CheckRow.Load(Table, id);
        row.Check([100 * SlantedCamera.CountErrorFraction(row["degrees"])]);
    }

    [Fact]
    public void A_bank_card_has_its_standard_size()
    {
        CheckRow row = CheckRow.Load(Table, "G10");
        row.Check([PhotoScale.CardLongMillimetres, PhotoScale.CardShortMillimetres]);
        // Corners marked at that size, ten pixels to the millimetre, give that scale.
        PhotoScale scale = PhotoScale.FromCard([new(0, 0), new(856, 0), new(856, 539.8), new(0, 539.8)]).Value;
        Assert.Equal(10, scale.Mapping.PixelsPerMillimetreAt(new PhotoPoint(400, 200)), 1e-6);
    }

    [Fact]
    public void A_slant_beyond_the_horizon_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SlantedCamera.CountErrorFraction(90));
}
