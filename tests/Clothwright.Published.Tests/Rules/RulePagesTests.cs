using Clothwright.Core.Workings;
using Clothwright.TestKit;

namespace Clothwright.Published.Tests.Rules;

public class RulePagesTests
{
    private static readonly RuleHarvest Harvest = RuleExercises.Harvest();

    public static TheoryData<string> Pages => [.. RulePages.Names];

    [Fact]
    public void Every_rule_of_the_sources_answers_once()
    {
        HashSet<string> shown = [.. Harvest.Rules.Select(r => r.Name)];
        string[] silent = [.. RuleSources.All.Where(r => !shown.Contains(r.Name) && r.Name != "decision").Select(r => $"{r.Name} ({r.File})")];
        Assert.True(silent.Length == 0, $"No exercise shows these rules: {string.Join("; ", silent)}. Add a question that makes them answer to {nameof(RuleExercises)}.");
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_of_rules_tells_what_the_program_shows(string page)
    {
        string path = Repository.PathOf("docs", "rules", page);
        string text = File.ReadAllText(path).ReplaceLineEndings("\n");
        string renewed = RulePages.Renewed(page, text, Harvest);
        if (renewed == text)
        {
            File.Delete(path + ".received");
            return;
        }

        File.WriteAllText(path + ".received", renewed);
        Assert.Fail($"docs/rules/{page} differs from what the program shows; read {page}.received and rename it if it is right.");
    }

    [Fact]
    public void A_rule_without_a_source_says_so() =>
        Assert.Empty(Harvest.Rules.Where(r => r.Source.Kind == SourceKind.CommonPractice && r.Source.Name != "common practice, no source").Select(r => r.Name));
}
