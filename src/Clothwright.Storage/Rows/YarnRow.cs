namespace Clothwright.Storage.Rows;

/// <summary>A yarn of the shelf.</summary>
internal sealed class YarnRow : IKeptRow
{
    public required string Id { get; set; }

    public int Version { get; set; }

    public bool IsDemo { get; set; }

    public required string Name { get; set; }

    public string? Count { get; set; }

    public string? CountSystem { get; set; }

    public string? Label { get; set; }

    public double? Tex { get; set; }

    public required string Construction { get; set; }

    public required string Colour { get; set; }

    public double? WrapsPerMetre { get; set; }

    public string? OfferForm { get; set; }

    public double? OfferNetKilograms { get; set; }

    public double? OfferPrice { get; set; }

    public List<YarnFibreRow> Fibres { get; set; } = [];

    public List<PackageRow> Packages { get; set; } = [];
}
