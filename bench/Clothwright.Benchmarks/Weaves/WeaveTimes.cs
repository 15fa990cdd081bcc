using System.Globalization;
using System.Numerics;
using System.Text;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Layers;

namespace Clothwright.Benchmarks.Weaves;

/// <summary>A short run of the weave questions at full width, as a table.</summary>
internal static class WeaveTimes
{
    private const int Runs = 40;

    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    public static string Table()
    {
        var text = new StringBuilder($"{BenchDrafts.Ends} ends × {BenchDrafts.Picks} picks, {BenchDrafts.Shafts} shafts, processor time of one call, mean of {Runs}\n\n");
        text.Append("| question | treadled, ms | a lift each pick, ms | threaded by chance too, ms | ns per crossing | × plain pass | bool[,], ms |\n|---|---|---|---|---|---|---|\n");
        Drawdown treadled = BenchDrafts.Treadled.Drawdown();
        Drawdown lifted = BenchDrafts.Lifted.Drawdown();
        Drawdown scattered = BenchDrafts.Scattered.Drawdown();
        bool[,] table = PlainTables.Drawdown(BenchDrafts.Lifted);
        double pass = Mean(() => Pass(lifted), runs: 400);

        Row("plain pass over the packed rows", Mean(() => Pass(treadled), runs: 400), pass, Mean(() => Pass(scattered), runs: 400), null);
        Row(
            "drawdown",
            Mean(() => BenchDrafts.Treadled.Drawdown()),
            Mean(() => BenchDrafts.Lifted.Drawdown()),
            Mean(() => BenchDrafts.Scattered.Drawdown()),
            Mean(() => PlainTables.Drawdown(BenchDrafts.Lifted), runs: 3));
        Row(
            "floats on both faces, all lengths",
            Mean(() => ClothFloats.Of(treadled, ClothReading.Repeat)),
            Mean(() => ClothFloats.Of(lifted, ClothReading.Repeat)),
            Mean(() => ClothFloats.Of(scattered, ClothReading.Repeat)),
            Mean(() => PlainTables.LongestFloats(table), runs: 3));
        Row(
            "layers",
            Mean(() => ClothLayers.Of(treadled)),
            Mean(() => ClothLayers.Of(lifted)),
            Mean(() => ClothLayers.Of(scattered)),
            Mean(() => PlainTables.HangsTogether(table), runs: 3));
        Row(
            "drawdown, floats and layers",
            Mean(() => All(BenchDrafts.Treadled)),
            Mean(() => All(BenchDrafts.Lifted)),
            Mean(() => All(BenchDrafts.Scattered)),
            Mean(() => PlainAll(BenchDrafts.Lifted), runs: 3));
        Row(
            "everything a draft check reports",
            Mean(() => ClothAnalysis.Of(BenchDrafts.Treadled)),
            Mean(() => ClothAnalysis.Of(BenchDrafts.Lifted)),
            Mean(() => ClothAnalysis.Of(BenchDrafts.Scattered)),
            null);
        return text.ToString();

        void Row(string question, double onTreadles, double byLifts, double byChance, double? plain)
        {
            double crossings = (double)BenchDrafts.Ends * BenchDrafts.Picks;
            string baseline = plain is { } p ? p.ToString("0", Plain) : "–";
            text.Append(Plain, $"| {question} | {onTreadles:0.000} | {byLifts:0.000} | {byChance:0.000} | {byChance * 1e6 / crossings:0.000} | {byChance / pass:0.0} | {baseline} |\n");
        }
    }

    /// <summary>Drawdown, floats of all four kinds and layers, the lines sorted once.</summary>
    public static (ClothFloats Floats, ClothLayers Layers) All(Draft draft)
    {
        ClothOutline outline = ClothOutline.Of(draft.Drawdown());
        return (outline.Floats, outline.Layers);
    }

    public static (int WarpFace, int WarpBack, int WeftFace, int WeftBack, bool Hangs) PlainAll(Draft draft)
    {
        bool[,] cloth = PlainTables.Drawdown(draft);
        (int warpFace, int warpBack, int weftFace, int weftBack) = PlainTables.LongestFloats(cloth);
        return (warpFace, warpBack, weftFace, weftBack, PlainTables.HangsTogether(cloth));
    }

    /// <summary>Reads every word once.</summary>
    public static long Pass(Drawdown cloth)
    {
        long sum = 0;
        for (int pick = 0; pick < cloth.Picks; pick++)
        {
            foreach (ulong word in cloth.Row(pick)) sum += BitOperations.PopCount(word);
        }

        return sum;
    }

    // Time on the processor, so that what else the machine does is left out; the collector's share is in it.
    private static double Mean<T>(Func<T> question, int runs = Runs)
    {
        // Called often enough beforehand to be compiled with all optimisations.
        for (int i = 0; i < runs; i++) question();
        Thread.Sleep(300);
        for (int i = 0; i < runs; i++) question();
        TimeSpan start = Environment.CpuUsage.TotalTime;
        for (int i = 0; i < runs; i++) question();
        return (Environment.CpuUsage.TotalTime - start).TotalMilliseconds / runs;
    }
}
