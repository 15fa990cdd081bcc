using System.Text.Json;
using Clothwright.Interchange.Http;
using Clothwright.Storage.Sqlite;
using Microsoft.Data.Sqlite;

namespace Clothwright.PowerCut;

/// <summary>Looks for what was lost, over HTTP as the page would, and in the file itself.</summary>
internal static class Inspection
{
    /// <summary>Everything that is not as it was acknowledged; nothing if all is well.</summary>
    public static async Task<List<string>> FaultsAsync(HttpClient http, IEnumerable<Weaver> weavers)
    {
        var faults = new List<string>();
        foreach (Weaver weaver in weavers.Where(w => w.Acknowledged.Count > 0))
        {
            WorksheetVersion[] history = JsonSerializer.Deserialize(await http.GetStringAsync($"api/worksheets/{weaver.Id}/history"), StudioJson.Default.WorksheetVersionArray)!;
            int[] numbers = [.. history.Select(s => s.Version).Order()];
            if (!numbers.SequenceEqual(Enumerable.Range(1, numbers.Length))) faults.Add($"{weaver.Id}: the history has gaps: {numbers.Length} saves, the last is {numbers[^1]}");
            foreach ((int version, string document) in weaver.Acknowledged)
            {
                using HttpResponseMessage kept = await http.GetAsync($"api/worksheets/{weaver.Id}/history/{version}");
                if (!kept.IsSuccessStatusCode) faults.Add($"{weaver.Id}: save {version} was acknowledged and is not there");
                else if (await kept.Content.ReadAsStringAsync() != document) faults.Add($"{weaver.Id}: save {version} holds something else than was acknowledged");
            }

            foreach (int version in numbers.Where(n => !weaver.Acknowledged.ContainsKey(n)))
            {
                string document = await http.GetStringAsync($"api/worksheets/{weaver.Id}/history/{version}");
                if (!weaver.Unanswered.Contains(document)) faults.Add($"{weaver.Id}: save {version} holds what was never sent");
            }

            using HttpResponseMessage current = await http.GetAsync($"api/worksheets/{weaver.Id}");
            if (current.Headers.ETag?.Tag != $"\"{numbers[^1]}\"") faults.Add($"{weaver.Id}: the worksheet stands at {current.Headers.ETag}, its history ends with {numbers[^1]}");
        }

        return faults;
    }

    /// <summary>What SQLite itself finds wrong in the file of a server that was stopped; "ok" if nothing.</summary>
    public static string Integrity(string folder) => Scalar(folder, "PRAGMA integrity_check; ");

    /// <summary>Takes one acknowledged save out of the file: the inspection has to find it missing.</summary>
    public static void LoseOne(string folder) => Scalar(folder, "DELETE FROM worksheet_saves WHERE rowid = (SELECT rowid FROM worksheet_saves WHERE Version = 1 LIMIT 1);");

    private static string Scalar(string folder, string statement)
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = Path.Combine(folder, SqliteStudio.FileName), Pooling = false }.ToString());
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = statement;
        return command.ExecuteScalar()?.ToString() ?? "";
    }
}
