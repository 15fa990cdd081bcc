using System.Globalization;
using System.Text;
using Clothwright.Core.Weaves.Faults;
using Clothwright.Core.Weaves.Fitting;

namespace Clothwright.Benchmarks.Weaves;

/// <summary>A short run of the questions of fitting and of faults, as a table.</summary>
internal static class FittingTimes
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    public static string Table()
    {
        var questions = new FittingBenchmarks();
        double pass = ProcessorTime.Mean(questions.PlainPass, runs: 400);
        var text = new StringBuilder("processor time of one call\n\n| question | answer | ms | × plain pass |\n|---|---|---|---|\n");
        LoomFitResult full = questions.FullWidthFit();
        Row("2,400 × 4,800 fitted to 24 shafts and 24 treadles", $"{full.Shafts.Value.Count} shafts, {full.Treadles.Value.Count} treadles, {Proof(full.Optimal)}", ProcessorTime.Mean(questions.FullWidthFit, runs: 5));
        Row("fewest treadles, all 30 lifts of 5 shafts, two feet", Answer(questions.EveryShedOfFiveShafts()), ProcessorTime.Mean(questions.EveryShedOfFiveShafts, runs: 5));
        Row("fewest treadles, tied unit weave of 4 blocks on 6 shafts, two feet", Answer(questions.TiedUnitOfFourBlocks()), ProcessorTime.Mean(questions.TiedUnitOfFourBlocks, runs: 10));
        Row("fewest treadles, tied unit weave of 6 blocks on 8 shafts, two feet", Answer(questions.TiedUnitOfSixBlocks()), ProcessorTime.Mean(questions.TiedUnitOfSixBlocks, runs: 2));
        FaultReport faults = questions.TwoSlipsIn200By200();
        Row("a wrong heddle and a wrong treadle found in 200 × 200 of twill", $"{faults.Readings.Length} reading{(faults.Readings.Length == 1 ? "" : "s")} of {faults.Readings[0].Steps.Length} slips", ProcessorTime.Mean(questions.TwoSlipsIn200By200, runs: 3));
        return text.ToString();

        void Row(string question, string answer, double milliseconds) =>
            text.Append(Plain, $"| {question} | {answer} | {milliseconds:0.0} | {milliseconds / pass:0} |\n");
    }

    private static string Answer(TieUpAnswer answer) => $"{answer.Chosen.Length} treadles, {Proof(answer.Proved)}{(answer.Proved ? "" : $", at least {answer.AtLeast}")}";

    private static string Proof(bool proved) => proved ? "proved" : "not proved";
}
