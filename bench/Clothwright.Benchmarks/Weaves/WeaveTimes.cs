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
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    public static string Table()
    {
        var text = new StringBuilder($"{BenchDrafts.Ends} ends × {BenchDrafts.Picks} picks, {BenchDrafts.Shafts} shafts, processor time of one call, mean of {ProcessorTime.Runs}\n\n");
        text.Append("| question | treadled, ms | a lift each pick, ms | threaded by chance too, ms | ns per crossing | × plain pass | bool[,], ms |\n|---|---|---|---|---|---|---|\n");
        Drawdown treadled = BenchDrafts.Treadled.Drawdown();
        Drawdown lifted = BenchDrafts.Lifted.Drawdown();
        Drawdown scattered = BenchDrafts.Scattered.Drawdown();
        bool[,] table = PlainTables.Drawdown(BenchDrafts.Lifted);
        double pass = ProcessorTime.Mean(() => Pass(lifted), runs: 400);

        Row("plain pass over the packed rows", ProcessorTime.Mean(() => Pass(treadled), runs: 400), pass, ProcessorTime.Mean(() => Pass(scattered), runs: 400), null);
        Row(
            "drawdown",
            ProcessorTime.Mean(() => BenchDrafts.Treadled.Drawdown()),
            ProcessorTime.Mean(() => BenchDrafts.Lifted.Drawdown()),
            ProcessorTime.Mean(() => BenchDrafts.Scattered.Drawdown()),
            ProcessorTime.Mean(() => PlainTables.Drawdown(BenchDrafts.Lifted), runs: 3));
        Row(
            "floats on both faces, all lengths",
            ProcessorTime.Mean(() => ClothFloats.Of(treadled, ClothReading.Repeat)),
            ProcessorTime.Mean(() => ClothFloats.Of(lifted, ClothReading.Repeat)),
            ProcessorTime.Mean(() => ClothFloats.Of(scattered, ClothReading.Repeat)),
            ProcessorTime.Mean(() => PlainTables.LongestFloats(table), runs: 3));
        Row(
            "layers",
            ProcessorTime.Mean(() => ClothLayers.Of(treadled)),
            ProcessorTime.Mean(() => ClothLayers.Of(lifted)),
            ProcessorTime.Mean(() => ClothLayers.Of(scattered)),
            ProcessorTime.Mean(() => PlainTables.HangsTogether(table), runs: 3));
        Row(
            "drawdown, floats and layers",
            ProcessorTime.Mean(() => All(BenchDrafts.Treadled)),
            ProcessorTime.Mean(() => All(BenchDrafts.Lifted)),
            ProcessorTime.Mean(() => All(BenchDrafts.Scattered)),
            ProcessorTime.Mean(() => PlainAll(BenchDrafts.Lifted), runs: 3));
        Row(
            "everything a draft check reports",
            ProcessorTime.Mean(() => ClothAnalysis.Of(BenchDrafts.Treadled)),
            ProcessorTime.Mean(() => ClothAnalysis.Of(BenchDrafts.Lifted)),
            ProcessorTime.Mean(() => ClothAnalysis.Of(BenchDrafts.Scattered)),
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
        ClothOutline outline = ClothOutline.Of(draft, out _);
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
}
