using System.Globalization;
using System.Text.RegularExpressions;
using Clothwright.Core.Yarns;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Yarns;

/// <summary>One row of a table of check values, with the numbers in its cells.</summary>
public sealed partial class CheckRow(IReadOnlyDictionary<string, string> cells)
{
    // Counts by the names that the tables use for them.
    private static readonly Dictionary<string, CountSystem> Systems = new()
    {
        ["NeC"] = CountSystem.Cotton,
        ["NeW"] = CountSystem.Worsted,
        ["NeL"] = CountSystem.Linen,
        ["run"] = CountSystem.WoollenRun,
        ["YSW"] = CountSystem.YorkshireSkein,
        ["Nm"] = CountSystem.Metric,
        ["Nf"] = CountSystem.French,
        ["tex"] = CountSystem.Tex,
        ["dtex"] = CountSystem.Decitex,
        ["denier"] = CountSystem.Denier,
        ["dram"] = CountSystem.DramSilk,
        ["lb_per_spyndle"] = CountSystem.JuteSpyndle,
        ["grains_per_120yd"] = CountSystem.Grain,
        ["yd_per_lb"] = CountSystem.YardsPerPound,
        ["yd_per_oz"] = CountSystem.YardsPerOunce,
        ["m_per_kg"] = CountSystem.MetresPerKilogram,
        ["glass_cut"] = CountSystem.GlassCut,
        ["old_denier"] = CountSystem.OldDenier,
        ["gala_cut"] = CountSystem.GalashielsCut,
        ["west_of_england"] = CountSystem.WestOfEngland,
        ["yd_per_50g"] = CountSystem.YardsPer50Grams,
        ["m_per_50g"] = CountSystem.MetresPer50Grams,
        ["m_per_100g"] = CountSystem.MetresPer100Grams,
    };

    public string Id => cells["id"];

    public string Inputs => cells["inputs"];

    public string Expected => cells["expected"];

    public static TheoryData<CheckRow> All(string table, Func<string, bool>? ids = null) =>
        [.. MarkdownTable.Load($"Tables/{table}").Rows.Select(r => new CheckRow(r)).Where(r => ids?.Invoke(r.Id) ?? true)];

    /// <summary>The pairs <c>name=value</c> of a cell.</summary>
    public static Dictionary<string, double> Pairs(string cell) =>
        NamedNumber().Matches(cell).ToDictionary(m => m.Groups[1].Value, m => Number(m.Groups[2].Value));

    /// <summary>All numbers of a cell, in order; a comma marks thousands.</summary>
    public static double[] Numbers(string cell) => [.. PlainNumber().Matches(cell).Select(m => Number(m.Value))];

    /// <summary>The part of a cell behind a name, for example the label behind <c>label=</c>.</summary>
    public static string? Word(string cell, string name) => cell.Split(';')
        .Select(p => p.Trim().Split('=', 2))
        .Where(p => p.Length == 2 && p[0] == name)
        .Select(p => p[1].Trim())
        .SingleOrDefault();

    /// <summary>The count system that a column of the tables is in; resultants carry the same name.</summary>
    public static CountSystem? System(string name) =>
        Systems.TryGetValue(name.Replace("_resultant", "", StringComparison.Ordinal), out CountSystem system) ? system : null;

    /// <summary>Fails when a value is further from the expected one than the row allows.</summary>
    public void Check(double expected, double actual)
    {
        string tolerance = cells["tolerance"];
        double allowed = tolerance switch
        {
            "exact" => Math.Abs(expected) * 1e-9,
            _ when tolerance.EndsWith("relative", StringComparison.Ordinal) => Math.Abs(expected) * double.Parse(tolerance.Split(' ')[0], CultureInfo.InvariantCulture),
            _ when tolerance.EndsWith('%') => Math.Abs(expected) * Numbers(tolerance)[0] / 100,
            _ => Numbers(tolerance)[0],
        };
        Assert.True(Math.Abs(actual - expected) <= allowed, $"{Id}: expected {expected} ± {allowed}, found {actual}.");
    }

    public override string ToString() => $"{Id} {cells["what"]}";

    private static double Number(string text) => double.Parse(text.Replace(",", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"([A-Za-z_0-9]+)=(\d[\d,]*(?:\.\d+)?)", RegexOptions.None, 1000)]
    private static partial Regex NamedNumber();

    [GeneratedRegex(@"\d[\d,]*(?:\.\d+)?", RegexOptions.None, 1000)]
    private static partial Regex PlainNumber();
}
