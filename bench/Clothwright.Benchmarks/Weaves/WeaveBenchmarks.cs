using BenchmarkDotNet.Attributes;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Layers;

namespace Clothwright.Benchmarks.Weaves;

/// <summary>The weave questions at full width: 2,400 ends, 4,800 picks, 24 shafts.</summary>
[MemoryDiagnoser]
public class WeaveBenchmarks
{
    private Draft _draft = BenchDrafts.Treadled;
    private Drawdown _cloth = BenchDrafts.Treadled.Drawdown();
    private bool[,] _table = new bool[1, 1];

    /// <summary>Whether every pick has a lift of its own.</summary>
    [Params(false, true)]
    public bool LiftEachPick { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        _draft = LiftEachPick ? BenchDrafts.Lifted : BenchDrafts.Treadled;
        _cloth = _draft.Drawdown();
        _table = PlainTables.Drawdown(_draft);
    }

    [Benchmark(Baseline = true)]
    public long PlainPass() => WeaveTimes.Pass(_cloth);

    [Benchmark]
    public Drawdown PackedDrawdown() => _draft.Drawdown();

    [Benchmark]
    public ClothFloats PackedFloats() => ClothFloats.Of(_cloth, ClothReading.Repeat);

    [Benchmark]
    public ClothLayers PackedLayers() => ClothLayers.Of(_cloth);

    [Benchmark]
    public (ClothFloats Floats, ClothLayers Layers) PackedAll() => WeaveTimes.All(_draft);

    [Benchmark]
    public bool[,] PlainDrawdown() => PlainTables.Drawdown(_draft);

    [Benchmark]
    public (int WarpFace, int WarpBack, int WeftFace, int WeftBack) PlainFloats() => PlainTables.LongestFloats(_table);

    [Benchmark]
    public bool PlainHangsTogether() => PlainTables.HangsTogether(_table);
}
