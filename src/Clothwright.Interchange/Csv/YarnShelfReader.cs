using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Wif;

namespace Clothwright.Interchange.Csv;

/// <summary>Gathers yarns and their packages from the rows of a shelf's table.</summary>
internal sealed class YarnShelfReader
{
    private readonly List<string> _order = [];
    private readonly Dictionary<string, (Yarn Yarn, ImmutableArray<YarnPackage>.Builder Packages)> _yarns = new(StringComparer.Ordinal);

    public void Take(CsvCells row)
    {
        string id = row.Text(YarnColumns.Id);
        if (id.Length == 0) throw row.Problem(YarnColumns.Id, "This yarn has no id.", "Give each yarn a short name of its own, for example tide-blue.");
        if (!_yarns.TryGetValue(id, out var held))
        {
            held = (Yarn(row, id), ImmutableArray.CreateBuilder<YarnPackage>());
            _yarns.Add(id, held);
            _order.Add(id);
        }

        if (Package(row) is { } package) held.Packages.Add(package);
    }

    public ImmutableArray<Yarn> Yarns() => [.. _order.Select(id => _yarns[id].Yarn with { Packages = _yarns[id].Packages.ToImmutable() })];

    private static Yarn Yarn(CsvCells row, string id)
    {
        string name = row.Text(YarnColumns.Name);
        double tex = Needed(row, YarnColumns.LinearDensity, "This yarn has no linear density.", "Write grams per kilometre, for example 148 for an 8/2 cotton.");
        double deviation = row.Measure(YarnColumns.Deviation) ?? 0;
        Parsed<FibreBlend> fibres = FibreBlend.Parse(row.Text(YarnColumns.Fibres));
        if (fibres.Problem is { } unknown) throw row.Problem(YarnColumns.Fibres, unknown.What, unknown.Mend);
        return new Yarn(
            id,
            name.Length == 0 ? id : name,
            Derived.Given($"linear density of {id}", LinearDensity.FromTex(tex), Source.Decision, deviation, $"linear density of {id}", "as listed on the shelf"),
            fibres.Value,
            row.Choice(YarnColumns.Construction, YarnConstruction.Spun),
            Colour(row))
        {
            MeasuredWraps = row.Measure(YarnColumns.Wraps) is { } wraps ? Wraps(row, id, wraps) : null,
            WrapMeasure = row.Choice(YarnColumns.WrapMeasure, WrapMeasure.Hand),
            Offer = Offer(row),
        };
    }

    private static Derived<Sett> Wraps(CsvCells row, string id, double perCentimetre) => perCentimetre > 0
        ? Derived.Given($"wraps of {id}", Sett.FromPerCentimetre(perCentimetre), Source.Measured)
        : throw row.Problem(YarnColumns.Wraps, "0 wraps are no measure.", "Leave the cell empty where the wraps were not counted.");

    private static SrgbColour Colour(CsvCells row)
    {
        string text = row.Text(YarnColumns.Colour);
        if (text.Length == 0) return WifConversion.Undyed;
        Parsed<SrgbColour> colour = SrgbColour.Parse(text);
        return colour.Problem is { } problem ? throw row.Problem(YarnColumns.Colour, problem.What, problem.Mend) : colour.Value;
    }

    private static YarnPackage? Package(CsvCells row)
    {
        if (row.Measure(YarnColumns.Gross) is not { } gross) return null;
        double tare = row.Measure(YarnColumns.Tare) ?? 0;
        if (tare > gross) throw row.Problem(YarnColumns.Tare, $"The support weighs {CsvText.Number(tare)} g, more than the {CsvText.Number(gross)} g of package and support together.", "Weigh the package with its support for gross_mass_g and the empty support for tare_g.");
        double? humidity = row.Measure(YarnColumns.Humidity);
        if (humidity > 100) throw row.Problem(YarnColumns.Humidity, $"{CsvText.Number(humidity.Value)} % is no humidity.", "Write 0 to 100, for example 65.");
        string lot = row.Text(YarnColumns.Lot);
        return new YarnPackage(row.Choice(YarnColumns.Form, PackageForm.Cone), Mass.FromGrams(gross), Mass.FromGrams(tare))
        {
            Lot = lot.Length == 0 ? null : lot,
            RelativeHumidity = humidity is { } percent ? Ratio.FromPercent(percent) : null,
            Basis = row.Choice(YarnColumns.MassBy, MassBasis.Weighed),
        };
    }

    private static YarnOffer? Offer(CsvCells row)
    {
        if (row.Measure(YarnColumns.OfferMass) is not { } grams) return null;
        if (grams == 0) throw row.Problem(YarnColumns.OfferMass, "A package of 0 g holds nothing.", "Write the net mass of one new package, for example 227.");
        double price = Needed(row, YarnColumns.OfferPrice, "A new package has a mass and no price.", "Write the price of one package, for example 18.50, or leave offer_net_mass_g empty.", mayBeZero: true);
        return new YarnOffer(row.Choice(YarnColumns.OfferForm, PackageForm.Cone), Mass.FromGrams(grams), Money.FromAmount(price));
    }

    private static double Needed(CsvCells row, string column, string missing, string mend, bool mayBeZero = false) =>
        row.Measure(column) is { } number && (number > 0 || mayBeZero) ? number : throw row.Problem(column, missing, mend);
}
