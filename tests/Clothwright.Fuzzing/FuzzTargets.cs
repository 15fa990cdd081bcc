using System.Text;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Csv;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Grids;
using Clothwright.Interchange.Wif;

namespace Clothwright.Fuzzing;

/// <summary>The readers under trial. Each is also asked to write what it read, and to read that again as the same.</summary>
public static class FuzzTargets
{
    /// <summary>The target of a name; null if there is none.</summary>
    /// <param name="name">wif, grid or table.</param>
    public static FuzzTarget? Find(string name) => name switch
    {
        "wif" => Wif,
        "grid" => Grid,
        "table" => Table,
        _ => null,
    };

    /// <summary>Files of the interchange standard.</summary>
    public static FuzzTarget Wif { get; } = new("wif", FuzzSeeds.Wif, FuzzSeeds.WifWords, TryWif);

    /// <summary>Text grids.</summary>
    public static FuzzTarget Grid { get; } = new("grid", FuzzSeeds.Grids, FuzzSeeds.GridWords, TryGrid);

    /// <summary>Tables of drafts.</summary>
    public static FuzzTarget Table { get; } = new("table", FuzzSeeds.Tables, FuzzSeeds.TableWords, TryTable);

    private static bool TryWif(byte[] file)
    {
        Parsed<WifReading> parsed = WifReader.Read(file);
        if (!parsed.TryGet(out WifReading? reading)) return Refused(parsed.Problem);
        byte[] once = WifWriter.WriteBytes(reading.Document);
        byte[] twice = WifWriter.WriteBytes(WifReader.Read(once).Value.Document);
        if (!once.AsSpan().SequenceEqual(twice)) throw new FuzzFindException("Writing is not stable after one pass.");
        Parsed<WovenDraft> draft = WifConversion.ToDraft(reading.Document);
        if (!draft.TryGet(out WovenDraft? woven)) return Refused(draft.Problem);
        WifConversion.ToDocument(woven);
        if (!DraftCheck.Checked(woven.Draft).Succeeded) throw new FuzzFindException("A draft was read that cannot be woven.");
        return true;
    }

    private static bool TryGrid(byte[] file)
    {
        Parsed<Drawdown> parsed = TextGrid.Read(Encoding.UTF8.GetString(file));
        if (!parsed.TryGet(out Drawdown? cloth)) return Refused(parsed.Problem);
        Drawdown again = TextGrid.Read(TextGrid.Write(cloth, GridOrder.FirstPickLast, GridMarks.Hashes)).Value;
        if (!cloth.Equals(again)) throw new FuzzFindException("A grid written and read is another cloth.");
        return true;
    }

    private static bool TryTable(byte[] file)
    {
        Parsed<WovenDraft> parsed = DraftTable.Read(Encoding.UTF8.GetString(file));
        if (!parsed.TryGet(out WovenDraft? woven)) return Refused(parsed.Problem);
        string once = DraftTable.Write(woven);
        string twice = DraftTable.Write(DraftTable.Read(once).Value);
        if (once != twice) throw new FuzzFindException("Writing is not stable after one pass.");
        return true;
    }

    private static bool Refused(InputProblem? problem)
    {
        bool helps = problem is { What.Length: > 0, Where.Length: > 0, Mend.Length: > 0 };
        return helps ? false : throw new FuzzFindException("A refusal does not say what, where and how to mend it.");
    }
}
