using System.Collections.Immutable;
using System.Text;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Csv;
using Clothwright.Interchange.Grids;
using Clothwright.Interchange.Wif;

namespace Clothwright.Interchange.Drafts;

/// <summary>Reads and writes drafts as files, whatever form they have.</summary>
public static class DraftFiles
{
    private const string Endings = ".wif, .txt (grid of 1 and 0), .csv (table)";

    /// <summary>Finds out what a file is by looking into it.</summary>
    /// <param name="bytes">The file.</param>
    public static DraftFileForm FormOf(ReadOnlySpan<byte> bytes)
    {
        if (IsPicture(bytes)) return DraftFileForm.Picture;
        string head = FileText.Decode(bytes[..Math.Min(bytes.Length, 65_536)], static (_, _) => { });
        foreach (ReadOnlySpan<char> line in head.EnumerateLines())
        {
            ReadOnlySpan<char> trimmed = line.Trim();
            if (trimmed.IsEmpty || trimmed[0] == ';') continue;
            if (trimmed[0] == '[') return DraftFileForm.Wif;
            return DraftTable.IsHead(trimmed) ? DraftFileForm.Table : DraftFileForm.TextGrid;
        }

        return DraftFileForm.TextGrid;
    }

    /// <summary>Reads a draft; of a drawdown alone, the draft with the fewest shafts and treadles that weaves it.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="name">Its name, to speak of it; the ending does not matter.</param>
    /// <param name="limits">How large it may be; null for <see cref="ReadingLimits.Usual"/>.</param>
    /// <returns>The draft, or the problem. A picture is not read here.</returns>
    public static Parsed<DraftFileReading> Read(ReadOnlySpan<byte> bytes, string name, ReadingLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(name);
        limits ??= ReadingLimits.Usual;
        if (bytes.IsEmpty) return new InputProblem("The file is empty.", name, $"Give a draft: {Endings}.");
        if (bytes.Length > limits.MaxBytes) return new InputProblem($"The file is larger than {limits.MaxBytes} bytes.", name, "Give one repeat of the draft, without pictures.");
        Parsed<DraftFileReading> reading = FormOf(bytes) switch
        {
            DraftFileForm.Wif => ReadWif(bytes, limits),
            DraftFileForm.Table => ReadText(bytes, DraftFileForm.Table, text => DraftTable.Read(text, limits)),
            DraftFileForm.Picture => new InputProblem("The file is a picture.", "file", $"Give a text: {Endings}."),
            _ => ReadText(bytes, DraftFileForm.TextGrid, text => OfGrid(text, limits)),
        };
        return reading.Problem is { } problem ? problem with { Where = $"{name}: {problem.Where}" } : reading;
    }

    /// <summary>Writes a draft in the form its file's ending asks for.</summary>
    /// <param name="woven">The draft.</param>
    /// <param name="name">Name of the file to be written; its ending counts.</param>
    /// <returns>The bytes of the file, or the problem: an ending that stands for no text form.</returns>
    public static Parsed<byte[]> Write(WovenDraft woven, string name)
    {
        ArgumentNullException.ThrowIfNull(woven);
        ArgumentNullException.ThrowIfNull(name);
        return Path.GetExtension(name).ToUpperInvariant() switch
        {
            ".WIF" => WifWriter.WriteBytes(WifConversion.ToDocument(woven)),
            ".TXT" => Encoding.UTF8.GetBytes(TextGrid.Write(woven.Draft.Drawdown(), GridOrder.FirstPickFirst, GridMarks.Digits)),
            ".CSV" => Encoding.UTF8.GetBytes(DraftTable.Write(woven)),
            _ => new InputProblem($"\"{Path.GetExtension(name)}\" is no ending of a text file of a draft.", name, $"Give the file one of these endings: {Endings}."),
        };
    }

    private static Parsed<DraftFileReading> ReadWif(ReadOnlySpan<byte> bytes, ReadingLimits limits)
    {
        Parsed<WifReading> read = WifReader.Read(bytes, limits);
        if (!read.TryGet(out WifReading? reading)) return read.Problem!;
        Parsed<WovenDraft> draft = WifConversion.ToDraft(reading.Document);
        return draft.TryGet(out WovenDraft? woven)
            ? new DraftFileReading(woven, DraftFileForm.Wif, [.. reading.Warnings.Select(w => w.ToString())])
            : draft.Problem!;
    }

    private static Parsed<DraftFileReading> ReadText(ReadOnlySpan<byte> bytes, DraftFileForm form, Func<string, Parsed<WovenDraft>> read)
    {
        var warnings = ImmutableArray.CreateBuilder<string>();
        string text = FileText.Decode(bytes, (line, what) => warnings.Add($"line {line}: {what}"));
        Parsed<WovenDraft> draft = read(text);
        return draft.TryGet(out WovenDraft? woven) ? new DraftFileReading(woven, form, warnings.ToImmutable()) : draft.Problem!;
    }

    private static Parsed<WovenDraft> OfGrid(string text, ReadingLimits limits)
    {
        Parsed<Drawdown> cloth = TextGrid.Read(text, GridOrder.FirstPickFirst, limits);
        if (!cloth.TryGet(out Drawdown? drawdown)) return cloth.Problem!;
        Parsed<Draft> draft = FewestDraft.Of(drawdown);
        return draft.TryGet(out Draft? fewest) ? WovenDraft.Of(fewest) : draft.Problem!;
    }

    // First bytes of PNG, JPEG, GIF, BMP and of the container of WebP.
    private static bool IsPicture(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G'])
        || bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF])
        || bytes.StartsWith("GIF8"u8)
        || bytes.StartsWith("BM"u8)
        || bytes.StartsWith("RIFF"u8);
}
