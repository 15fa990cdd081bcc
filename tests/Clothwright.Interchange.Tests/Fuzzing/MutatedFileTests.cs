using Clothwright.Fuzzing;

namespace Clothwright.Interchange.Tests.Fuzzing;

/// <summary>A small share of what the fuzzing program runs, with a seed of its own.</summary>
public sealed class MutatedFileTests
{
    [Theory]
    [InlineData("wif", 3_000)]
    [InlineData("grid", 3_000)]
    [InlineData("table", 2_000)]
    public void Mutated_files_are_read_or_refused_and_nothing_else(string kind, int count)
    {
        FuzzReport report = FuzzRun.Of(FuzzTargets.Find(kind)!, count, seed: 20_251);
        Assert.True(report.Finds.Count == 0, report.ToString());
        Assert.True(report.SlowestMilliseconds <= FuzzReport.MaxMilliseconds, report.ToString());

        // Some of each: a mutation so strong that nothing is read would try the first line of the reader only.
        Assert.InRange(report.Read, count / 50, count);
        Assert.InRange(report.Refused, count / 100, count);
    }
}
