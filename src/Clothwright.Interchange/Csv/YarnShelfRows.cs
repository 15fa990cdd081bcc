using Clothwright.Core.Yarns;

namespace Clothwright.Interchange.Csv;

/// <summary>The rows of one yarn of a shelf.</summary>
internal static class YarnShelfRows
{
    public static IEnumerable<IEnumerable<string>> Of(Yarn yarn)
    {
        if (yarn.Packages.IsEmpty) return [Row(yarn, null)];
        return yarn.Packages.Select(package => Row(yarn, package));
    }

    private static IEnumerable<string> Row(Yarn yarn, YarnPackage? package) =>
    [
        yarn.Id,
        yarn.Name,
        CsvText.Measure(yarn.LinearDensity.Value.Tex),
        CsvText.Measure(yarn.LinearDensity.StandardDeviation),
        yarn.Fibres.ToString(),
        Word(yarn.Construction),
        yarn.Colour.ToString(),
        yarn.MeasuredWraps is { } wraps ? CsvText.Measure(wraps.Value.PerCentimetre) : "",
        yarn.MeasuredWraps is null ? "" : Word(yarn.WrapMeasure),
        package is null ? "" : Word(package.Form),
        package is null ? "" : CsvText.Measure(package.GrossMass.Grams),
        package is null ? "" : CsvText.Measure(package.Tare.Grams),
        package?.Lot ?? "",
        package?.RelativeHumidity is { } humidity ? CsvText.Measure(humidity.Percent) : "",
        yarn.Offer is { } form ? Word(form.Form) : "",
        yarn.Offer is { } offer ? CsvText.Measure(offer.NetMass.Grams) : "",
        yarn.Offer is { } priced ? CsvText.Measure(priced.Price.Amount) : "",
        package is null ? "" : Word(package.Basis),
    ];

    private static string Word<T>(T value)
        where T : struct, Enum => value.ToString().ToLowerInvariant();
}
