using System.Globalization;
using System.Text.Json;
using System.Text.Unicode;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson.Fields;
using Clothwright.Interchange.WorksheetJson.Sections;

namespace Clothwright.Interchange.WorksheetJson;

/// <summary>Reads worksheet files, strictly: what is not understood is refused with its place and a mend.</summary>
public static class WorksheetReader
{
    /// <summary>The largest file read, in bytes. A worksheet with a drawn draft of thousands of threads takes a hundredth.</summary>
    public const int LargestBytes = 4 * 1024 * 1024;

    /// <summary>The most characters of a title, a note or a name. A draft takes what its threads take, within <see cref="LargestBytes"/>.</summary>
    public const int LongestText = 10_000;

    /// <summary>How deep objects and lists may stand within each other.</summary>
    public const int DeepestNesting = 16;

    internal static string[] Fields { get; } =
    [
        "clothwright", "title", "note", "units", "currency", "bench", "shelf", "loom", "weave", "purpose",
        "sett", .. JsonSection.ThreadFields("ends")[..2], "reed", "warp", "pieces", "allowances", "rates", "$schema",
    ];

    /// <summary>Reads a worksheet.</summary>
    /// <param name="utf8">The file: JSON as UTF-8, with or without a byte order mark.</param>
    /// <param name="draftFile">Reads a draft file that the worksheet names, by its path as written; null where files cannot be read.</param>
    /// <returns>The worksheet, or the first problem with its place in the file.</returns>
    public static Parsed<Worksheet> Read(ReadOnlyMemory<byte> utf8, Func<string, Parsed<Draft>>? draftFile = null)
    {
        try
        {
            using JsonDocument document = Parse(utf8);
            return Read(document.RootElement, draftFile);
        }
        catch (JsonException fault)
        {
            return Malformed(fault);
        }
        catch (InputProblemException refusal)
        {
            return refusal.Problem;
        }
    }

    private static JsonDocument Parse(ReadOnlyMemory<byte> utf8)
    {
        if (utf8.Length > LargestBytes)
        {
            throw Refuse(
                $"The file holds {utf8.Length.ToString(CultureInfo.InvariantCulture)} bytes; a worksheet holds at most {LargestBytes.ToString(CultureInfo.InvariantCulture)}.",
                "Give the path of a worksheet, for example samples/reedbed-scarves.json.");
        }

        ReadOnlyMemory<byte> text = utf8.Span.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8;
        if (!Utf8.IsValid(text.Span)) throw Refuse("The file is not text: it holds bytes that no UTF-8 text has.", "Save it as plain UTF-8 text, or give the path of a worksheet.");
        if (text.Span.Trim(" \t\r\n"u8).IsEmpty) throw Refuse("The file is empty.", "Give the path of a worksheet, for example samples/reedbed-scarves.json.");
        return JsonDocument.Parse(text, new JsonDocumentOptions { MaxDepth = DeepestNesting, AllowDuplicateProperties = false });
    }

    private static Worksheet Read(JsonElement root, Func<string, Parsed<Draft>>? draftFile)
    {
        RefuseOtherVersions(root);
        var file = new JsonSection(root, "", Fields);
        JsonSection bench = file.Section("bench", BenchJson.Fields);
        JsonSection warp = file.Section("warp", WarpJson.Fields);
        var worksheet = new Worksheet
        {
            Title = file.Text("title", "Two reedbed scarves"),
            Note = file.OptionalText("note") ?? "",
            Units = file.Word<UnitStyle>("units", JsonWords.Units, UnitStyle.Metric),
            Currency = ReadCurrency(file),
            Looms = BenchJson.ReadLooms(bench),
            Reeds = BenchJson.ReadReeds(bench),
            Heddles = BenchJson.ReadHeddles(bench),
            Shelf = ShelfJson.Read(file),
            LoomId = file.Text("loom", "table-8"),
            Weave = WeaveJson.ReadRequired(file, draftFile),
            Purpose = file.Word<ClothPurpose>("purpose", JsonWords.Purposes, ClothPurpose.Everyday),
            Sett = ReadSett(file),
            Reed = file.OptionalText("reed"),
            Warp = WarpJson.ReadOrder(warp),
            Pieces = [.. file.Sections("pieces", PieceJson.Fields).Select(p => PieceJson.Read(p, draftFile))],
            Allowances = file.OptionalSection("allowances", AllowancesJson.Fields) is { } allowances ? AllowancesJson.Read(allowances) : Allowances.None,
            Rates = file.OptionalSection("rates", RatesJson.Fields) is { } rates ? RatesJson.Read(rates) : WorkRates.Customary,
        };
        return WarpJson.ReadRest(warp, worksheet);
    }

    // The version comes first: a later version may have fields that this one does not know.
    private static void RefuseOtherVersions(JsonElement root)
    {
        const string Mend = "Begin the file with \"clothwright\": 1.";
        if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty("clothwright", out JsonElement version))
        {
            throw new InputProblemException(new InputProblem("The file does not say that it is a worksheet.", "clothwright", Mend));
        }

        if (version.ValueKind == JsonValueKind.Number && version.TryGetInt32(out int number) && number > Worksheet.CurrentVersion)
        {
            throw new InputProblemException(new InputProblem(
                $"The worksheet is of version {number}; this program reads version {Worksheet.CurrentVersion}.", "clothwright", "Use a newer program, or save the worksheet as version 1."));
        }

        if (version.ValueKind != JsonValueKind.Number || !version.TryGetInt32(out number) || number < 1)
        {
            throw new InputProblemException(new InputProblem($"{JsonSection.Quote(version)} is no version of a worksheet.", "clothwright", Mend));
        }
    }

    private static string ReadCurrency(JsonSection file)
    {
        string currency = file.OptionalText("currency") ?? "EUR";
        return currency.Length == 3 && currency.All(char.IsAsciiLetterUpper)
            ? currency
            : throw file.Problem("currency", $"\"{currency}\" is not a currency.", "Write its three letters, for example \"EUR\".");
    }

    private static Sett? ReadSett(JsonSection file)
    {
        string[] given = [.. Fields.Where(f => f is "sett" or "endsPerCentimetre" or "endsPerInch").Where(file.Has)];
        if (given.Length > 1) throw file.Problem(given[1], $"\"{given[0]}\" and \"{given[1]}\" both give the sett.", "Keep one of them.");
        if (file.OptionalText("sett") is not { } text) return file.OptionalThreads("ends");
        return string.Equals(text.Trim(), "advise", StringComparison.OrdinalIgnoreCase) ? null : file.Threads(text, "sett");
    }

    private static InputProblem Malformed(JsonException fault)
    {
        long line = (fault.LineNumber ?? 0) + 1;
        long column = (fault.BytePositionInLine ?? 0) + 1;
        string reason = fault.Message.Split(" LineNumber:", 2)[0].Split(" Path:", 2)[0].TrimEnd('.', ' ');
        return new InputProblem(
            $"The file is not well-formed JSON: {reason}.",
            $"line {line}, byte {column}",
            "Look just before this place for a missing comma, quotation mark or bracket, or one too many.");
    }

    private static InputProblemException Refuse(string what, string mend) => new(new InputProblem(what, "file", mend));
}
