using System.Diagnostics;
using System.Globalization;
using System.Text;
using Clothwright.Core.Plans;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson;

namespace Clothwright.Benchmarks.Plans;

/// <summary>How long planning itself takes, without reading and writing files, for every sample.</summary>
internal static class PlanTimes
{
    private const int Runs = 200;

    /// <summary>The table.</summary>
    /// <param name="folder">Where the samples lie.</param>
    public static string Table(string folder)
    {
        CultureInfo plain = CultureInfo.InvariantCulture;
        (string Name, Worksheet Sheet)[] sheets = [.. Directory.GetFiles(folder, "*.json").Order(StringComparer.Ordinal).Select(f => (Path.GetFileNameWithoutExtension(f), WorksheetReader.Read(File.ReadAllBytes(f)).Value))];
        (string Name, Worksheet Sheet) main = sheets.First(s => s.Name == "reedbed-scarves");
        double cold = Once(main.Sheet);
        foreach ((_, Worksheet sheet) in sheets) Mean(sheet);
        Thread.Sleep(500);
        var text = new StringBuilder(string.Create(plain, $"processor time of one plan, mean of {Runs}; the first plan of a fresh process took {cold:0} ms ({main.Name}), most of it compiling\n\n"));
        text.Append("| sample | ends | picks | figures with working | plan, ms |\n|---|---|---|---|---|\n");
        foreach ((string name, Worksheet sheet) in sheets)
        {
            PlanResult plan = sheet.Plan().Value;
            text.Append(plain, $"| {name} | {plan.Ends.Total.Value.Count} | {plan.Picks.Value.Count} | {plan.Figures.All.Length} | {Mean(sheet):0.00} |\n");
        }

        return text.ToString();
    }

    private static double Once(Worksheet sheet)
    {
        long start = Stopwatch.GetTimestamp();
        sheet.Plan();
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }

    // Time on the processor, so that what else the machine does is left out; the collector's share is in it.
    private static double Mean(Worksheet sheet)
    {
        for (int i = 0; i < 30; i++) sheet.Plan();
        TimeSpan start = Environment.CpuUsage.TotalTime;
        for (int i = 0; i < Runs; i++) sheet.Plan();
        return (Environment.CpuUsage.TotalTime - start).TotalMilliseconds / Runs;
    }
}
