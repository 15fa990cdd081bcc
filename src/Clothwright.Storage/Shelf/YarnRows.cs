using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Storage.Rows;

namespace Clothwright.Storage.Shelf;

/// <summary>A yarn as it stands in the tables, and back.</summary>
internal static class YarnRows
{
    public static YarnRow Row(YarnEntry yarn, bool demo) => new()
    {
        Id = yarn.Id,
        IsDemo = demo,
        Name = yarn.Name,
        Count = yarn.Count,
        CountSystem = yarn.CountSystem,
        Label = yarn.Label,
        Tex = yarn.LinearDensity?.Tex,
        Construction = yarn.Construction.ToString(),
        Colour = yarn.Colour.ToString(),
        WrapsPerMetre = yarn.Wraps?.PerMetre,
        OfferForm = yarn.Offer?.Form.ToString(),
        OfferNetKilograms = yarn.Offer?.NetMass.Kilograms,
        OfferPrice = yarn.Offer?.Price.Amount,
        Fibres = [.. yarn.Fibres.Select((f, i) => new YarnFibreRow { Place = i, FibreId = f.FibreId, MassShare = f.MassShare.Value })],
        Packages = [.. yarn.Packages.Select(PackageRow)],
    };

    public static YarnEntry Yarn(YarnRow row) => new()
    {
        Id = row.Id,
        Name = row.Name,
        Count = row.Count,
        CountSystem = row.CountSystem,
        Label = row.Label,
        LinearDensity = row.Tex is { } tex ? LinearDensity.FromTex(tex) : null,
        Construction = Enum.Parse<YarnConstruction>(row.Construction),
        Colour = SrgbColour.Parse(row.Colour).Value,
        Wraps = row.WrapsPerMetre is { } wraps ? Sett.FromPerMetre(wraps) : null,
        Offer = row.OfferForm is { } form
            ? new YarnOffer(Enum.Parse<PackageForm>(form), Mass.FromKilograms(row.OfferNetKilograms!.Value), Money.FromAmount(row.OfferPrice!.Value))
            : null,
        Fibres = [.. row.Fibres.OrderBy(f => f.Place).Select(f => new FibreEntry(f.FibreId, Ratio.FromValue(f.MassShare)))],
        Packages = [.. row.Packages.OrderBy(p => p.Place).Select(Package)],
    };

    private static PackageRow PackageRow(YarnPackage package, int place) => new()
    {
        Place = place,
        Form = package.Form.ToString(),
        GrossKilograms = package.GrossMass.Kilograms,
        TareKilograms = package.Tare.Kilograms,
        Lot = package.Lot,
        RelativeHumidity = package.RelativeHumidity?.Value,
        Basis = package.Basis.ToString(),
    };

    private static YarnPackage Package(PackageRow row) =>
        new(Enum.Parse<PackageForm>(row.Form), Mass.FromKilograms(row.GrossKilograms), Mass.FromKilograms(row.TareKilograms))
        {
            Lot = row.Lot,
            RelativeHumidity = row.RelativeHumidity is { } humidity ? Ratio.FromValue(humidity) : null,
            Basis = row.Basis is { } basis ? Enum.Parse<MassBasis>(basis) : MassBasis.Weighed,
        };
}
