using System.Text.Json;
using System.Text.RegularExpressions;
using Clothwright.TestKit;

namespace Clothwright.Browser.Tests;

public partial class TextTests
{
    private static readonly string Client = Repository.PathOf("src", "Clothwright.Client");

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
        HashSet<string> enumerations = [.. Directory.EnumerateFiles(Repository.PathOf("src"), "*.cs", SearchOption.AllDirectories).Select(f => Path.GetFileNameWithoutExtension(f)).Where(n => char.IsUpper(n[0]))];
        string[] beginnings = [.. Beginning().Matches(source).Select(m => m.Groups[1].Value).Distinct()];
        Assert.DoesNotContain(Texts().Keys, k =>
            !source.Contains($"\"{k}\"", StringComparison.Ordinal)
            && !beginnings.Any(b => k.StartsWith(b, StringComparison.Ordinal))
            && !enumerations.Contains(k.Split('.')[0]));
    }

    [Fact]
    public void Braces_of_every_text_are_closed() =>
        Assert.Empty(Texts().Where(t => t.Value.Count(c => c == '{') != t.Value.Count(c => c == '}')).Select(t => t.Key));

    [Fact]
    public void Every_language_says_everything()
    {
        string[] english = [.. Texts().Keys.Order(StringComparer.Ordinal)];
        Assert.All(Languages(), language => Assert.Equal(english, Texts(language).Keys.Order(StringComparer.Ordinal)));
    }

    [Fact]
    public void Every_language_leaves_the_same_places_to_be_filled() =>
        Assert.All(Languages(), language => Assert.All(Texts(language), t => Assert.Equal(Places(Texts()[t.Key]), Places(t.Value))));

    private static string[] Places(string text) => [.. Place().Matches(text).Select(m => m.Value).Distinct().Order(StringComparer.Ordinal)];

    private static string[] Languages()
    {
        string[] languages = [.. Directory.EnumerateFiles(Path.Combine(Client, "Texts"), "*.texts.json").Select(f => Path.GetFileName(f).Split('.')[1]).Distinct()];
        Assert.True(languages.Length > 1);
        return languages;
    }

    private static Dictionary<string, string> Texts(string language = "en")
    {
        Dictionary<string, string> texts = [];
        foreach (string file in Directory.EnumerateFiles(Path.Combine(Client, "Texts"), $"*.{language}.texts.json"))
        {
            using JsonDocument document = JsonDocument.Parse(File.ReadAllBytes(file));
            foreach (JsonProperty text in document.RootElement.EnumerateObject()) texts.Add(text.Name, text.Value.GetString()!);
        }

        return texts;
    }

    private static IEnumerable<string> Sources() => Directory.EnumerateFiles(Client, "*", SearchOption.AllDirectories)
        .Where(f => f.EndsWith(".razor", StringComparison.Ordinal) || f.EndsWith(".cs", StringComparison.Ordinal));

    private static string[] Asked() => [.. Sources().SelectMany(f => Key().Matches(File.ReadAllText(f)).Select(m => m.Groups[1].Value)).Distinct()];

    [GeneratedRegex("""(?:Phrases\[|Phrases\.With\(|Sentence Key=)"([A-Za-z.]+)["]""")]
    private static partial Regex Key();

    // A key that the page puts together from a beginning and a value; a member of an enumeration stands under the enumeration's name.
    [GeneratedRegex("""\$"([A-Za-z.]+\.)[{]""")]
    private static partial Regex Beginning();

    [GeneratedRegex("[{][A-Za-z]+[}]")]
    private static partial Regex Place();
}
