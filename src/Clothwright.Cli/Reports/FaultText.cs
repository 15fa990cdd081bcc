using System.Text;
using Clothwright.Core.Weaves.Faults;

namespace Clothwright.Cli.Reports;

/// <summary>What may have gone wrong, for a person.</summary>
internal static class FaultText
{
    private const int ReadingsShown = 5;

    /// <summary>The readings, likeliest first, each with its mend.</summary>
    /// <param name="report">What was found.</param>
    /// <param name="limits">How far was looked.</param>
    /// <param name="marked">Whether wrong places were marked, rather than the whole cloth seen.</param>
    public static string Of(FaultReport report, FaultLimits limits, bool marked)
    {
        if (report.NothingWrong) return "The cloth is as the draft wants it.";
        var text = new StringBuilder();
        if (report.Readings.IsEmpty)
        {
            WrappedText.Append(
                text,
                $"No {(limits.MostSlips == 1 ? "single slip was" : $"{limits.MostSlips} slips or fewer were")} found that explain it. See that end 1 is at the left and the first pick first, or look for more with --most-slips.",
                "",
                "");
            return text.ToString().TrimEnd();
        }

        text.AppendLine(Head(report, marked));
        int number = 0;
        foreach (FaultReading reading in report.Readings.Take(ReadingsShown))
        {
            number++;
            foreach (FaultStep step in reading.Steps)
            {
                WrappedText.Append(text, step.What, step == reading.Steps[0] ? $"{number}. " : "   ", "   ");
                WrappedText.Append(text, $"Mend: {step.Mend.Words}", "   ", "   ");
            }

            if (reading.Left > 0) text.AppendLine($"   {Left(reading.Left, marked)}");
        }

        int more = report.Readings.Length - ReadingsShown;
        if (more > 0) text.AppendLine($"{more} more would explain it as well; --json lists all.");
        if (!report.Proved) text.AppendLine("Not every possibility was tried: there may be a simpler answer.");
        return text.ToString().TrimEnd();
    }

    private static string Left(int crossings, bool marked) => (marked, crossings) switch
    {
        (true, 1) => "It would also change 1 crossing that is not marked.",
        (true, _) => $"It would also change {crossings} crossings that are not marked.",
        (false, 1) => "It leaves 1 crossing unexplained.",
        _ => $"It leaves {crossings} crossings unexplained.",
    };

    private static string Head(FaultReport report, bool marked)
    {
        int slips = report.Readings[0].Steps.Length;
        string count = slips == 1 ? "One slip" : $"{slips} slips together";
        if (!marked && report.Readings[0].Left > 0) return $"{(slips == 1 ? "No single slip explains" : $"No {slips} slips explain")} all of it; the nearest:";
        string ways = report.Readings.Length == 1 ? "" : $"; there are {report.Readings.Length} ways, likeliest first";
        return $"{count} {(slips == 1 ? "explains" : "explain")} it{(report.Proved ? ", and nothing less does" : "")}{ways}.";
    }
}
