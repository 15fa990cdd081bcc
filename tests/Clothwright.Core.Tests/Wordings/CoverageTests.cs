using Clothwright.Core.Wordings;
using Clothwright.TestKit;

namespace Clothwright.Core.Tests.Wordings;

/// <summary>Whether everything that the program can say has its words in every other language.</summary>
public sealed class CoverageTests
{
    private static readonly string[] NotTold =
        [.. MarkdownTable.Load(Repository.PathOf("tests", "Clothwright.Core.Tests", "Wordings", "not-told.md"), "file").Rows.Select(r => r["file"])];

    private static readonly SaidSentence[] Said = [.. SentenceSources.In("Clothwright.Core", IsAside)];

    // What stands around the domain: there only whole sentences are surely told to a person, the rest is keys, columns and marks.
    private static readonly SaidSentence[] SaidAround =
    [
        .. from project in (string[])["Clothwright.Interchange", "Clothwright.Drawing", "Clothwright.Storage"]
           from said in SentenceSources.In(project, IsAside)
           select said with { IsName = said.IsName || !(said.Pattern.EndsWith('.') && said.Pattern.Contains(' ', StringComparison.Ordinal)) },
    ];

    public static TheoryData<string> OtherLanguages => [.. Wording.Languages.Except(["en"])];

    [Theory]
    [MemberData(nameof(OtherLanguages))]
    public void Every_sentence_of_the_sources_is_told(string language)
    {
        HashSet<string> told = [.. WordingTables.Of(language).Select(e => e.Said)];
        string[] missing = [.. Said.Concat(SaidAround).Where(s => !s.IsName && !told.Contains(s.Pattern)).Select(s => $"{s.File}: {s.Pattern}").Distinct()];
        Assert.True(missing.Length == 0, $"Add to Wordings/Tables/*.{language}.po:\n{string.Join('\n', missing)}");
    }

    [Theory]
    [MemberData(nameof(OtherLanguages))]
    public void Every_name_and_note_of_the_tables_of_fibres_constructions_and_counts_is_told(string language)
    {
        HashSet<string> told = [.. WordingTables.Of(language).Select(e => e.Said)];
        IEnumerable<string> texts =
        [
            .. TableTexts.Rows("Yarns/Fibres/fibres.table.txt", "fibre", 2),
            .. TableTexts.Rows("Yarns/Fibres/fibres.table.txt", "note", 1),
            .. TableTexts.Columns("Yarns/Constructions/constructions.table.txt", "name", "what", "sett", "weft", "says", "advice"),
            .. TableTexts.Columns("Yarns/Counts/count-systems.table.txt", "title"),
        ];
        string[] missing = [.. texts.SelectMany(SentenceSplit.Of).Where(t => !told.Contains(t) && !told.Contains(t.TrimEnd('.')))];
        Assert.Empty(missing);
    }

    [Theory]
    [MemberData(nameof(OtherLanguages))]
    public void Nothing_is_told_that_is_not_said_any_more(string language)
    {
        HashSet<string> said = [.. Said.Concat(SaidAround).Select(s => s.Pattern)];
        string folder = Repository.PathOf("src", "Clothwright.Core", "Wordings", "Tables");
        IEnumerable<string> entries = Directory.GetFiles(folder, $"*.{language}.po")
            .Where(f => !Path.GetFileName(f).StartsWith("things.", StringComparison.Ordinal) && !Path.GetFileName(f).StartsWith("materials.", StringComparison.Ordinal))
            .SelectMany(f => WordingTables.Entries(File.ReadAllText(f)))
            .Select(e => e.Said);
        string[] gone = [.. entries.Where(e => !said.Contains(e))];
        Assert.Empty(gone);
    }

    [Theory]
    [MemberData(nameof(OtherLanguages))]
    public void No_pattern_stands_in_two_tables_and_none_loses_or_invents_a_place(string language)
    {
        (string Said, string Told)[] table = [.. WordingTables.Of(language)];
        Assert.Empty(table.GroupBy(e => e.Said).Where(g => g.Count() > 1).Select(g => g.Key));
        string[] changed = [.. table.Where(e => !Places(e.Said).SetEquals(Places(e.Told))).Select(e => e.Said)];
        Assert.Empty(changed);
    }

    private static HashSet<string> Places(string pattern) => [.. Placed.Cut(pattern).Places.Select(p => p.Split('?')[0])];

    private static bool IsAside(string file) => NotTold.Any(start => file.StartsWith(start, StringComparison.Ordinal));
}
