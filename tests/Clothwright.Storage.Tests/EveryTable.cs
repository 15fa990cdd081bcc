using System.Data.Common;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Clothwright.Storage.Tests;

/// <summary>What stands in every table of a studio, cell by cell, as the database itself has it.</summary>
internal static class EveryTable
{
    /// <summary>Each row of each table by the table's name, in the order of its key; each cell as its column and its value.</summary>
    public static async Task<SortedDictionary<string, List<SortedDictionary<string, string>>>> OfAsync(StudioContext studio)
    {
        var tables = new SortedDictionary<string, List<SortedDictionary<string, string>>>(StringComparer.Ordinal);
        await studio.Database.OpenConnectionAsync();
        foreach (ITable table in studio.Model.GetRelationalModel().Tables)
        {
            string Quoted(string name) => $"\"{name}\"";
            await using DbCommand command = studio.Database.GetDbConnection().CreateCommand();
            command.CommandText = $"SELECT * FROM {Quoted(table.Name)} ORDER BY {string.Join(", ", table.PrimaryKey!.Columns.Select(c => Quoted(c.Name)))}";
            var rows = tables[table.Name] = [];
            await using DbDataReader reader = await command.ExecuteReaderAsync();
            while (await reader.ReadAsync())
            {
                var row = new SortedDictionary<string, string>(StringComparer.Ordinal);
                for (int i = 0; i < reader.FieldCount; i++) row[reader.GetName(i)] = Text(reader.GetValue(i));
                rows.Add(row);
            }
        }

        return tables;
    }

    private static string Text(object value) => value switch
    {
        DBNull => "null",
        byte[] bytes => Convert.ToHexString(bytes),
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        string[] list => string.Join('|', list),
        IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString()!,
    };
}
