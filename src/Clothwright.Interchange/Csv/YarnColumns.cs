using System.Collections.Immutable;

namespace Clothwright.Interchange.Csv;

/// <summary>Columns of the table of a shelf.</summary>
internal static class YarnColumns
{
    public const string Id = "id";
    public const string Name = "name";
    public const string LinearDensity = "linear_density_tex";
    public const string Deviation = "linear_density_deviation_tex";
    public const string Fibres = "fibres";
    public const string Construction = "construction";
    public const string Colour = "colour";
    public const string Wraps = "wraps_per_centimetre";
    public const string WrapMeasure = "wraps_counted";
    public const string Form = "package_form";
    public const string Gross = "gross_mass_g";
    public const string Tare = "tare_g";
    public const string Lot = "lot";
    public const string Humidity = "relative_humidity_percent";
    public const string MassBy = "mass_by";
    public const string OfferForm = "offer_form";
    public const string OfferMass = "offer_net_mass_g";
    public const string OfferPrice = "offer_price";

    public static ImmutableArray<string> All { get; } =
    [
        Id, Name, LinearDensity, Deviation, Fibres, Construction, Colour, Wraps, WrapMeasure,
        Form, Gross, Tare, Lot, Humidity, OfferForm, OfferMass, OfferPrice, MassBy,
    ];
}
