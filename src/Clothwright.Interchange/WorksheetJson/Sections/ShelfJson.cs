using System.Collections.Immutable;
using System.Text.Json;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.WorksheetJson.Fields;

namespace Clothwright.Interchange.WorksheetJson.Sections;

/// <summary>The section <c>shelf</c>: the yarns.</summary>
internal static class ShelfJson
{
    public static string[] Fields { get; } =
    [
        "id", "name", "count", "system", "label", "tex", "fibres", "construction", "colour",
        .. JsonSection.ThreadFields("wraps"), "packages", "offer",
    ];

    public static string[] FibreFields { get; } = ["fibre", "sharePercent"];

    public static string[] PackageFields { get; } = ["form", "grossGrams", "gross", "tareGrams", "tare", "lot", "relativeHumidityPercent", "massBy"];

    public static string[] OfferFields { get; } = ["form", "netGrams", "net", "price"];

    // A yarn says in one of these ways how fine it is.
    private static readonly string[] Fineness = ["count", "label", "tex"];

    public static ImmutableArray<YarnEntry> Read(JsonSection file) => [.. file.Sections("shelf", Fields).Select(ReadYarn)];

    public static void Write(Utf8JsonWriter writer, Worksheet worksheet)
    {
        writer.WriteStartArray("shelf");
        foreach (YarnEntry yarn in worksheet.Shelf) Write(writer, yarn);
        writer.WriteEndArray();
    }

    public static YarnEntry ReadYarn(JsonSection yarn)
    {
        string[] ways = [.. Fineness.Where(yarn.Has)];
        if (ways.Length == 0) throw yarn.Missing("count", "\"count\": \"8/2\" with \"system\": \"cotton\", or \"label\": \"400 m / 100 g\", or \"tex\": 148");
        if (ways.Length > 1) throw yarn.Problem(ways[1], $"\"{ways[0]}\" and \"{ways[1]}\" both say how fine the yarn is.", "Keep the one that was printed or measured.");
        double? tex = yarn.OptionalNumber("tex", 0, 1e6, above: true);
        ImmutableArray<FibreEntry> fibres = [.. yarn.Sections("fibres", FibreFields).Select(ReadFibre)];
        if (fibres.IsEmpty) throw yarn.Missing("fibres", "\"fibres\": [ { \"fibre\": \"wool\", \"sharePercent\": 100 } ]");
        return new YarnEntry
        {
            Id = yarn.Text("id", "tide-blue"),
            Name = yarn.OptionalText("name") ?? yarn.Text("id", "tide-blue"),
            Count = yarn.OptionalText("count"),
            CountSystem = yarn.OptionalText("system"),
            Label = yarn.OptionalText("label"),
            LinearDensity = tex is { } fineness ? LinearDensity.FromTex(fineness) : null,
            Fibres = fibres,
            Construction = yarn.Word<YarnConstruction>("construction", JsonWords.Constructions, YarnConstruction.Spun),
            Colour = ReadColour(yarn),
            Wraps = yarn.OptionalThreads("wraps"),
            Packages = [.. yarn.Sections("packages", PackageFields).Select(ReadPackage)],
            Offer = yarn.OptionalSection("offer", OfferFields) is { } offer ? ReadOffer(offer) : null,
        };
    }

    private static SrgbColour ReadColour(JsonSection yarn)
    {
        Parsed<SrgbColour> colour = SrgbColour.Parse(yarn.Text("colour", "#3b7a78"));
        return colour.TryGet(out SrgbColour value) ? value : throw new InputProblemException(colour.Problem! with { Where = yarn.At("colour") });
    }

    private static FibreEntry ReadFibre(JsonSection fibre) => new(
        fibre.Text("fibre", "wool"),
        Ratio.FromPercent(fibre.OptionalNumber("sharePercent", 0, 100, above: true) ?? 100));

    private static YarnPackage ReadPackage(JsonSection package) => new(
        package.Word("form", JsonWords.PackageForms),
        package.OptionalMass("gross") ?? throw package.Missing("gross", "\"grossGrams\": 454"),
        package.OptionalMass("tare") ?? Mass.Zero)
    {
        Lot = package.OptionalText("lot"),
        RelativeHumidity = package.OptionalPercent("relativeHumidityPercent", 0, 100),
        Basis = package.Word<MassBasis>("massBy", JsonWords.MassBases, MassBasis.Weighed),
    };

    private static YarnOffer ReadOffer(JsonSection offer)
    {
        Mass net = offer.OptionalMass("net") ?? throw offer.Missing("net", "\"netGrams\": 100");
        if (net.Grams <= 0) throw offer.Problem("net", "A package of 0 g cannot be bought.", "Write for example \"netGrams\": 100.");
        double price = offer.OptionalNumber("price", 0, 1e6) ?? throw offer.Missing("price", "\"price\": 12.50");
        return new YarnOffer(offer.Word("form", JsonWords.PackageForms), net, Money.FromAmount(price));
    }

    public static void Write(Utf8JsonWriter writer, YarnEntry yarn)
    {
        writer.WriteStartObject();
        writer.WriteString("id", yarn.Id);
        writer.WriteString("name", yarn.Name);
        if (yarn.Count is not null) writer.WriteString("count", yarn.Count);
        if (yarn.CountSystem is not null) writer.WriteString("system", yarn.CountSystem);
        if (yarn.Label is not null) writer.WriteString("label", yarn.Label);
        if (yarn.LinearDensity is { } tex) writer.Number("tex", tex.Tex);
        writer.WriteStartArray("fibres");
        foreach (FibreEntry fibre in yarn.Fibres)
        {
            writer.WriteStartObject();
            writer.WriteString("fibre", fibre.FibreId);
            writer.Percent("share", fibre.MassShare);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteString("construction", JsonWords.Constructions.Of(yarn.Construction));
        writer.WriteString("colour", yarn.Colour.ToString());
        if (yarn.Wraps is { } wraps) writer.Threads("wraps", wraps);
        WriteStock(writer, yarn);
        writer.WriteEndObject();
    }

    private static void WriteStock(Utf8JsonWriter writer, YarnEntry yarn)
    {
        if (!yarn.Packages.IsEmpty)
        {
            writer.WriteStartArray("packages");
            foreach (YarnPackage package in yarn.Packages)
            {
                writer.WriteStartObject();
                writer.WriteString("form", JsonWords.PackageForms.Of(package.Form));
                writer.Number("grossGrams", package.GrossMass.Grams);
                writer.Number("tareGrams", package.Tare.Grams);
                if (package.Lot is not null) writer.WriteString("lot", package.Lot);
                writer.Percent("relativeHumidity", package.RelativeHumidity);
                if (package.Basis != MassBasis.Weighed) writer.WriteString("massBy", JsonWords.MassBases.Of(package.Basis));
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
        }

        if (yarn.Offer is { } offer)
        {
            writer.WriteStartObject("offer");
            writer.WriteString("form", JsonWords.PackageForms.Of(offer.Form));
            writer.Number("netGrams", offer.NetMass.Grams);
            writer.Number("price", offer.Price.Amount);
            writer.WriteEndObject();
        }
    }
}
