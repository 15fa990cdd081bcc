using System.Collections.Immutable;

namespace Clothwright.Interchange.Csv;

/// <summary>Names that weavers give the columns of their tables, in English and German. Common practice, no source.</summary>
internal static class ColumnWords
{
    private static readonly ImmutableArray<(YarnColumnRole Role, string[] Words)> Known =
    [
        (YarnColumnRole.Id, ["id", "key", "code", "sku", "article no", "artikelnummer", "kürzel"]),
        (YarnColumnRole.ColourName, ["colour name", "color name", "colour", "color", "colorway", "colourway", "shade", "farbe", "farbname", "farbton"]),
        (YarnColumnRole.Colour, ["hex", "rgb", "srgb", "colour code", "color code", "farbcode"]),
        (YarnColumnRole.CountSystem, ["count system", "system", "linear density unit", "zählsystem"]),
        (YarnColumnRole.Count, ["count", "yarn count", "size", "yarn size", "grist", "linear density", "garnnummer", "nummer", "feinheit", "stärke", "titer"]),
        (YarnColumnRole.Label, ["label", "length per mass", "put up length", "yardage", "meterage", "metrage", "lauflänge", "banderole"]),
        (YarnColumnRole.Fibres, ["fibre", "fiber", "fibres", "fibers", "fibre content", "fiber content", "material", "content", "composition", "faser", "fasern", "zusammensetzung"]),
        (YarnColumnRole.Construction, ["construction", "make", "type", "ply", "art", "machart", "konstruktion"]),
        (YarnColumnRole.Form, ["form", "package form", "package", "put up", "put-up", "aufmachung", "verpackung"]),
        (YarnColumnRole.GrossMass, ["gross", "gross mass", "gross weight", "brutto", "bruttogewicht", "on the scale", "scale"]),
        (YarnColumnRole.Tare, ["tare", "tara", "support", "cone weight", "empty", "hülse"]),
        (YarnColumnRole.NetMass, ["net", "net mass", "net weight", "weight", "mass", "package mass", "gewicht", "nettogewicht", "masse", "menge", "grams", "amount"]),
        (YarnColumnRole.Packages, ["packages", "quantity", "qty", "number", "pieces", "pcs", "cones", "balls", "skeins", "left", "stock", "in stock", "on hand", "anzahl", "stück", "bestand", "vorrat", "konen", "knäuel"]),
        (YarnColumnRole.Lot, ["lot", "dye lot", "dyelot", "batch", "partie", "charge", "farbpartie"]),
        (YarnColumnRole.Price, ["price", "offer price", "cost", "price each", "unit price", "preis", "kosten", "stückpreis"]),
        (YarnColumnRole.Name, ["name", "yarn", "yarn name", "title", "item", "article", "description", "product", "garn", "garnname", "bezeichnung", "artikel", "beschreibung"]),
    ];

    /// <summary>Units of mass that may stand in the name of a column.</summary>
    public static ImmutableArray<string> MassUnits { get; } = ["g", "kg", "oz", "lb"];

    /// <summary>What a column of this name tells; null if the name is not known.</summary>
    /// <param name="header">The name as it stands in the table.</param>
    /// <param name="unit">The unit that stands in the name.</param>
    public static YarnColumnRole? RoleOf(string header, out string? unit)
    {
        string[] words = string.Concat(header.ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) || c is '-' ? c : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        unit = words.Select(Unit).LastOrDefault(u => u is not null);
        string? found = unit;
        string plain = string.Join(' ', words.Where(w => w is not ("in" or "of" or "per" or "each" or "the" or "pro") && (Unit(w) is null || Unit(w) != found || words.Length == 1)));
        if (plain.Length == 0) return null;
        foreach ((YarnColumnRole role, string[] known) in Known)
        {
            if (known.Contains(plain, StringComparer.Ordinal)) return role;
        }

        return MassUnits.Contains(plain) ? YarnColumnRole.NetMass : null;
    }

    private static string? Unit(string word) => word switch
    {
        "g" or "gram" or "grams" or "gramm" => "g",
        "kg" => "kg",
        "oz" or "ounces" => "oz",
        "lb" or "lbs" or "pounds" => "lb",
        _ => null,
    };
}
