using System.Text.RegularExpressions;
using Clothwright.TestKit;

namespace Clothwright.Cli.Tests;

/// <summary>The guide shows what the commands really print; a line that holds an ellipsis alone stands for lines left out.</summary>
public partial class GuideTests
{
    [Theory]
    [InlineData("docs/guide/commands.md", 16)]
    [InlineData("samples/README.md", 8)]
    public void The_guide_shows_what_is_printed(string page, int least)
    {
        string path = Repository.PathOf(page.Split('/'));
        using var folder = new PassingFolder();
        string written = File.ReadAllText(path).ReplaceLineEndings("\n");
        int examples = 0;
        string actual = Example().Replace(written, example =>
        {
            examples++;
            string printed = Elided(Printed(example.Groups["line"].Value, folder), example.Groups["shown"].Value);
            return $"```console\n$ {example.Groups["line"].Value}\n{printed}\n```";
        });
        if (actual != written) File.WriteAllText(path + ".received", actual);

        Assert.True(examples >= least, $"{page} has {examples} examples.");
        Assert.True(actual == written, $"{page} shows what is no longer printed: read the .received beside it, and rename it if it is right.");
    }

    [Fact]
    public void The_gallery_shows_every_sample_and_pictures_that_are_there()
    {
        string gallery = File.ReadAllText(Repository.PathOf("samples", "README.md"));
        foreach (string sample in Directory.GetFiles(Repository.PathOf("samples"), "*.json").Select(f => System.IO.Path.GetFileName(f))) Assert.Contains($"plan samples/{sample}", gallery, StringComparison.Ordinal);
        string[] pictures = [.. Picture().Matches(gallery).Select(m => m.Groups["file"].Value)];
        Assert.NotEmpty(pictures);
        Assert.All(pictures, p => Assert.True(File.Exists(Repository.PathOf("docs", "pictures", p)), $"docs/pictures/{p} is not there; draw it with eng/Pictures."));
    }

    private static string Printed(string line, PassingFolder folder)
    {
        CommandLine run = CommandLine.Run([.. Word().Matches(line).Skip(1).Select(w => Placed(w.Value.Trim('"'), folder))]);
        return (run.Output + run.Error).ReplaceLineEndings("\n").Replace(folder.Path, "out", StringComparison.Ordinal).TrimEnd();
    }

    // As many lines at the start and at the end as were shown before.
    private static string Elided(string printed, string shown)
    {
        List<string> before = [.. shown.TrimEnd().Split('\n')];
        int cut = before.IndexOf("…");
        string[] lines = printed.Split('\n');
        int tail = before.Count - cut - 1;
        return cut < 0 || cut + tail >= lines.Length ? printed : string.Join('\n', [.. lines[..cut], "…", .. lines[(lines.Length - tail)..]]);
    }

    private static string Placed(string word, PassingFolder folder) =>
        word.StartsWith("samples/", StringComparison.Ordinal) ? Repository.PathOf(word.Split('/'))
        : word == "out" ? folder.Path
        : word.StartsWith("out/", StringComparison.Ordinal) ? folder.File(word[4..])
        : word;

    [GeneratedRegex(@"```console\n\$ (?<line>[^\n]*)\n(?<shown>.*?)\n?```", RegexOptions.Singleline | RegexOptions.ExplicitCapture)]
    private static partial Regex Example();

    [GeneratedRegex(@"\(\.\./docs/pictures/(?<file>[^)]+)\)", RegexOptions.ExplicitCapture)]
    private static partial Regex Picture();

    [GeneratedRegex(@"""[^""]*""|\S+")]
    private static partial Regex Word();
}
