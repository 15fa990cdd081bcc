using System.Text.Json;
using System.Text.RegularExpressions;
using Clothwright.TestKit;

namespace Clothwright.Browser.Tests;

public partial class TextTests
{
    private static readonly string Client = Repository.PathOf("src", "Clothwright.Client");

    // Keys that the page puts together from a beginning and the name of a value.
    private static readonly string[] Beginnings =
        ["keep.", "one.", "many.", "scale.", "mend.", "UnitStyle.", "FringeStyle.", "Wearer.", "PieceMake.", "RingJoin.", "YarnConstruction.", "PackageForm.", "ClothPurpose.", "EndsFit."];

    [Fact]
    public void Every_text_that_the_page_asks_for_is_there()
    {
        HashSet<string> known = [.. Texts().Keys];
        Assert.NotEmpty(Asked());
        Assert.DoesNotContain(Asked(), k => !known.Contains(k));
    }

    [Fact]
    public void Every_text_is_asked_for_somewhere()
    {
        string source = string.Concat(Sources().Select(File.ReadAllText));
        Assert.DoesNotContain(Texts().Keys, k => !source.Contains($"\"{k}\"", StringComparison.Ordinal) && !Beginnings.Any(b => k.StartsWith(b, StringComparison.Ordinal)));
    }

    [Fact]
    public void Braces_of_every_text_are_closed() =>
        Assert.Empty(Texts().Where(t => t.Value.Count(c => c == '{') != t.Value.Count(c => c == '}')).Select(t => t.Key));

    private static Dictionary<string, string> Texts()
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Client, "Texts", "en.texts.json")));
        return document.RootElement.EnumerateObject().ToDictionary(p => p.Name, p => p.Value.GetString()!);
    }

    private static IEnumerable<string> Sources() => Directory.EnumerateFiles(Client, "*", SearchOption.AllDirectories)
        .Where(f => f.EndsWith(".razor", StringComparison.Ordinal) || f.EndsWith(".cs", StringComparison.Ordinal));

    private static string[] Asked() => [.. Sources().SelectMany(f => Key().Matches(File.ReadAllText(f)).Select(m => m.Groups[1].Value)).Distinct()];

    [GeneratedRegex("""(?:Phrases\[|Phrases\.With\(|Sentence Key=)"([A-Za-z.]+)["]""")]
    private static partial Regex Key();
}
