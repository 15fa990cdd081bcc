using System.Text;
using Clothwright.Core.Weaves.Faults;

namespace Clothwright.Cli.Reports;

/// <summary>What may have gone wrong, for a person.</summary>
internal static class FaultText
{
    private const int ReadingsShown = 5;

    /// <summary>The readings, likeliest first, each with its mend.</summary>
    public static string Of(FaultReport report, FaultLimits limits)
    {
        if (report.NothingWrong) return "The cloth is as the draft wants it.";
        var text = new StringBuilder();
        if (report.Readings.IsEmpty)
        {
            WrappedText.Append(
                text,
                $"No {limits.MostSlips} slips or fewer were found that explain it. See that end 1 is at the left and the first pick first, or look for more with --most-slips.",
                "",
                "");
            return text.ToString().TrimEnd();
        }

        text.AppendLine(Head(report));
        int number = 0;
        foreach (FaultReading reading in report.Readings.Take(ReadingsShown))
        {
            number++;
            foreach (FaultStep step in reading.Steps)
            {
                WrappedText.Append(text, step.What, step == reading.Steps[0] ? $"{number}. " : "   ", "   ");
                WrappedText.Append(text, $"Mend: {step.Mend.Words}", "   ", "   ");
            }

            if (reading.Left > 0) text.AppendLine($"   It leaves {reading.Left} crossing{(reading.Left == 1 ? "" : "s")} unexplained.");
        }

        int more = report.Readings.Length - ReadingsShown;
        if (more > 0) text.AppendLine($"{more} more would explain it as well; --json lists all.");
        if (!report.Proved) text.AppendLine("Not every possibility was tried: there may be a simpler answer.");
        return text.ToString().TrimEnd();
    }

    private static string Head(FaultReport report)
    {
        int slips = report.Readings[0].Steps.Length;
        string made = slips == 1 ? "One slip explains it" : $"{slips} slips together explain it";
        string sure = report.Proved ? ", and nothing less does" : "";
        string ways = report.Readings.Length == 1 ? "" : $"; there are {report.Readings.Length} ways, likeliest first";
        return $"{made}{sure}{ways}.";
    }
}
