using System.Globalization;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests;

/// <summary>One row of a table of check values: named inputs, expected numbers, a tolerance for each.</summary>
internal sealed class CheckRow
{
    private readonly Dictionary<string, string> _inputs;

    private CheckRow(IReadOnlyDictionary<string, string> cells)
    {
        Id = cells["id"];
        Expected = Parts(cells["expected"]);
        Tolerances = Parts(cells["tolerance"]);
        _inputs = cells["inputs"] == "–" ? [] : Parts(cells["inputs"]).Select(p => p.Split('=', 2)).ToDictionary(p => p[0], p => p[1]);
    }

    public string Id { get; }

    public string[] Expected { get; }

    public string[] Tolerances { get; }

    /// <summary>An input as a number.</summary>
    public double this[string name] => double.Parse(_inputs[name], CultureInfo.InvariantCulture);

    public static TheoryData<string> Ids(string table, string prefixes)
    {
        var data = new TheoryData<string>();
        foreach (var row in MarkdownTable.Load(table).Rows.Where(r => prefixes.Contains(r["id"][0], StringComparison.Ordinal))) data.Add(row["id"]);
        return data;
    }

    public static CheckRow Load(string table, string id) => new(MarkdownTable.Load(table).Rows.Single(r => r["id"] == id));

    /// <summary>An input as text.</summary>
    public string Text(string name) => _inputs[name];

    public string? TextOrNull(string name) => _inputs.GetValueOrDefault(name);

    /// <summary>Holds computed numbers against the expected ones; an expectation without its own tolerance shares the last.</summary>
    public void Check(double[] actual)
    {
        Assert.Equal(Expected.Length, actual.Length);
        for (int i = 0; i < actual.Length; i++)
        {
            double expected = double.Parse(Expected[i], CultureInfo.InvariantCulture);
            double tolerance = double.Parse(Tolerances[Math.Min(i, Tolerances.Length - 1)], CultureInfo.InvariantCulture);
            // An exact row still allows for the rounding of doubles.
            Assert.True(Math.Abs(actual[i] - expected) <= Math.Max(tolerance, 1e-12 * Math.Abs(expected)), $"{Id}, value {i + 1}: expected {expected}, got {actual[i]}.");
        }
    }

    private static string[] Parts(string cell) => cell.Split(';', StringSplitOptions.TrimEntries);
}
