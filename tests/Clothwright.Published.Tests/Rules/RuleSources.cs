using System.Text.RegularExpressions;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Rules;

/// <summary>Finds in the sources which rules the program can make, by name.</summary>
internal static partial class RuleSources
{
    // Made in the sources with a name that is put together: those are harvested by the name they get.
    private static readonly string[] PutTogether = ["label", "definition", "$"];

    /// <summary>Name of each rule and the file that makes it, relative to the sources.</summary>
    public static IReadOnlyList<(string Name, string File)> All { get; } =
        [.. Directory.GetFiles(Repository.PathOf("src"), "*.cs", SearchOption.AllDirectories).Order(StringComparer.Ordinal).SelectMany(InFile).Distinct()];

    /// <summary>The file that makes a rule; null where its name is put together. Of several that make one of this name, the one that holds the formula's beginning.</summary>
    public static string? FileOf(string name, string formula)
    {
        string[] files = [.. All.Where(r => r.Name == name).Select(r => r.File)];
        string beginning = formula[..Math.Min(formula.Length, 20)];
        return files.FirstOrDefault(f => files.Length > 1 && System.IO.File.ReadAllText(Repository.PathOf("src", f)).Contains(beginning, StringComparison.Ordinal)) ?? files.FirstOrDefault();
    }

    private static IEnumerable<(string Name, string File)> InFile(string path)
    {
        string text = System.IO.File.ReadAllText(path);
        string file = Path.GetRelativePath(Repository.PathOf("src"), path).Replace('\\', '/');
        foreach (Match match in Made().Matches(text))
        {
            string name = match.Groups[1].Value;
            if (name.StartsWith('"')) yield return (name.Trim('"'), file);
            else if (Regex.Match(text, $"const string {Regex.Escape(name)} = \"([^\"]*)\"") is { Success: true } constant) yield return (constant.Groups[1].Value, file);
            else if (name.Contains('.', StringComparison.Ordinal) && ConstantElsewhere(name) is { } elsewhere) yield return (elsewhere, file);
            else if (!PutTogether.Any(p => name.StartsWith(p, StringComparison.Ordinal))) throw new InvalidOperationException($"{file}: the name of a rule cannot be read from {name}.");
        }
    }

    private static string? ConstantElsewhere(string dotted)
    {
        string[] parts = dotted.Split('.');
        return Directory.GetFiles(Repository.PathOf("src"), $"{parts[0]}.cs", SearchOption.AllDirectories)
            .Select(p => Regex.Match(System.IO.File.ReadAllText(p), $"const string {Regex.Escape(parts[1])} = \"([^\"]*)\""))
            .FirstOrDefault(m => m.Success)?.Groups[1].Value;
    }

    [GeneratedRegex("""(?:new Rule\(|\bRule\??\s+\w+(?:\s*\{ get; \})?\s*=\s*new\()\s*("[^"]*"|\$"[^"]*"|[\w.]+)""")]
    private static partial Regex Made();
}
