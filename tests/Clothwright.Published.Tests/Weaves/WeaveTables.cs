using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Weaves;

/// <summary>The tables of weave checks, row by row.</summary>
internal static class WeaveTables
{
    /// <summary>Ids of a table's rows, for a theory.</summary>
    public static TheoryData<string> Ids(string table) => new(Load(table).Rows.Select(r => r["id"]));

    /// <summary>One row of a table.</summary>
    public static IReadOnlyDictionary<string, string> Row(string table, string id) => Load(table).Rows.Single(r => r["id"] == id);

    private static MarkdownTable Load(string table) => MarkdownTable.Load($"Tables/{table}.md");
}
