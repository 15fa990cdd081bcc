using System.Text.Json;
using System.Text.RegularExpressions;
using Clothwright.Core.Weaves.Structures;
using Clothwright.TestKit;

namespace Clothwright.Core.Tests.Weaves.Structures;

public partial class WeaveSentenceTests
{
    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public void Every_weave_has_a_sentence_on_the_page_with_a_blank_for_each_choice(string language)
    {
        Dictionary<string, string> texts = Texts(language);
        foreach (WeaveEntry entry in WeaveCatalogue.All)
        {
            Assert.True(texts.ContainsKey($"weaves.{entry.Name}"), entry.Name);
            Assert.True(texts.ContainsKey($"inshort.{entry.Name}"), entry.Name);
            Assert.True(texts.ContainsKey($"family.{entry.Family}"), entry.Family);
            string[] places = entry.Parameters.IsEmpty ? [] : [.. Place().Matches(texts[$"making.{entry.Name}"]).Select(m => m.Groups[1].Value).Order(StringComparer.Ordinal)];
            Assert.Equal(entry.Parameters.Select(p => p.Name).Order(StringComparer.Ordinal), places);
            Assert.All(entry.Parameters.SelectMany(p => p.Choices), choice => Assert.True(texts.ContainsKey($"choice.{choice}"), choice));
        }
    }

    [Fact]
    public void The_page_says_in_short_what_the_catalogue_says() =>
        Assert.All(WeaveCatalogue.All, entry => Assert.Equal(entry.InShort, Texts("en")[$"inshort.{entry.Name}"]));

    private static Dictionary<string, string> Texts(string language)
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllBytes(Repository.PathOf("src", "Clothwright.Client", "Texts", $"drafting.{language}.texts.json")));
        return document.RootElement.EnumerateObject().ToDictionary(t => t.Name, t => t.Value.GetString()!, StringComparer.Ordinal);
    }

    [GeneratedRegex("[{]([a-z]+)[}]")]
    private static partial Regex Place();
}
