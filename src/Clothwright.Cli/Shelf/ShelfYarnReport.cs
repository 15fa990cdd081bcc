using System.Globalization;
using System.Text.Json.Nodes;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Http;

namespace Clothwright.Cli.Shelf;

/// <summary>One yarn of the shelf, for a person and for a program.</summary>
internal static class ShelfYarnReport
{
    /// <summary>The yarn in one line, or two where its stock needs a word.</summary>
    public static string Text(YarnEntry entry, Yarn yarn, FreeStock free)
    {
        Length length = StockReckoning.LengthOnShelf(yarn).Value;
        string packages = yarn.Packages.Length == 1 ? "1 package" : $"{yarn.Packages.Length} packages";
        string reserved = free.Reserved.Value > Mass.Zero ? $", {Grams(free.Reserved.Value)} set aside, {Grams(free.Free.Value)} free" : "";
        string lots = string.Join(", ", entry.Packages.Select(p => p.Lot).OfType<string>().Distinct(StringComparer.Ordinal));
        return string.Create(CultureInfo.InvariantCulture, $"{entry.Id}: {entry.Name}; {yarn.LinearDensity.Value.Tex:0.#} tex, {yarn.Fibres}; {packages}, {Grams(free.OnShelf.Value)}, {length.Metres:0} m{reserved}{(lots.Length > 0 ? $"; lot {lots}" : "")}");
    }

    /// <summary>The yarn for a program.</summary>
    public static JsonObject Json(Kept<YarnEntry> kept, Yarn yarn, FreeStock free)
    {
        Core.Workings.Derived<Length> length = StockReckoning.LengthOnShelf(yarn);
        return new JsonObject
        {
            ["id"] = kept.Item.Id,
            ["version"] = kept.Version,
            ["name"] = kept.Item.Name,
            ["tex"] = yarn.LinearDensity.Value.Tex,
            ["count"] = kept.Item.Count,
            ["system"] = kept.Item.CountSystem,
            ["label"] = kept.Item.Label,
            ["fibres"] = yarn.Fibres.ToString(),
            ["colour"] = kept.Item.Colour.ToString(),
            ["packages"] = new JsonArray([.. StockReckoning.OnShelf(yarn).Select(s => new JsonObject
            {
                ["form"] = s.Package.Form.ToString().ToLowerInvariant(),
                ["netGrams"] = s.NetMass.Value.Grams,
                ["agreedGrams"] = s.AgreedMass.Value.Grams,
                ["metres"] = s.Length.Value.Metres,
                ["massBy"] = s.Package.Basis.ToString().ToLowerInvariant(),
                ["lot"] = s.Package.Lot,
            })]),
            ["grams"] = free.OnShelf.Value.Grams,
            ["gramsStandardDeviation"] = free.OnShelf.StandardDeviation * 1000,
            ["metres"] = length.Value.Metres,
            ["metresStandardDeviation"] = length.StandardDeviation,
            ["reservedGrams"] = free.Reserved.Value.Grams,
            ["freeGrams"] = free.Free.Value.Grams,
        };
    }

    /// <summary>What is left of a yarn, and what of it is set aside.</summary>
    public static FreeStock Free(Yarn yarn, IEnumerable<Kept<YarnReservation>> reserved) => FreeStock.Of(
        StockReckoning.OnShelf(yarn),
        [.. reserved.Where(r => r.Item.YarnId == yarn.Id).Select(r => (r.Item.WorksheetId, Mass.FromGrams(r.Item.Grams)))]);

    private static string Grams(Mass mass) => string.Create(CultureInfo.InvariantCulture, $"{mass.Grams:0.#} g");
}
