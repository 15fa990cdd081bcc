using System.Globalization;

namespace Clothwright.Storage.Bundles;

/// <summary>Names of the files in a packed studio.</summary>
internal static class BundleNames
{
    public const string Manifest = "clothwright.json";

    public const string Shelf = "shelf.json";

    public const string ShelfTable = "shelf.csv";

    public const string Bench = "bench.json";

    public const string Swatches = "swatches.json";

    public const string SwatchTable = "swatches.csv";

    public const string WeavingLog = "weaving-log.json";

    public const string WeavingLogTable = "weaving-log.csv";

    public const string Photos = "photos.json";

    public const string Reservations = "reservations.json";

    public static string Photo(string id) => $"photos/{id}.jpg";

    public static string Worksheet(string id) => $"worksheets/{id}/worksheet.json";

    public static string Draft(string id) => $"worksheets/{id}/draft.wif";

    public static string History(string id) => $"worksheets/{id}/history.json";

    public static string Save(string id, int version) => $"worksheets/{id}/history/{version.ToString("D4", CultureInfo.InvariantCulture)}.json";
}
