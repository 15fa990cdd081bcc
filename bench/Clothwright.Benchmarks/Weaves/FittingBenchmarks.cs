using BenchmarkDotNet.Attributes;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Faults;
using Clothwright.Core.Weaves.Fitting;

namespace Clothwright.Benchmarks.Weaves;

/// <summary>Fitting a cloth to a loom, proving the fewest treadles, and finding two slips.</summary>
[MemoryDiagnoser]
public class FittingBenchmarks
{
    private static readonly Draft Twill = BenchDrafts.Treadled.Repeated(200, 200);

    private static readonly Drawdown Slipped =
        new WrongTreadle(70, ShaftSet.Of(8)).Apply(new WrongHeddle(50, ShaftSet.Of(1)).Apply(Twill)).Drawdown();

    private readonly Drawdown _cloth = BenchDrafts.Treadled.Drawdown();

    // Every shed of five shafts, and a tied unit weave of four blocks on six.
    private readonly TieUpProblem _everyShed = TieUpProblem.Union([.. Enumerable.Range(1, 30).Select(b => new ShaftSet((ulong)b))], 2);

    private readonly TieUpProblem _tiedUnit = TieUpProblem.Union(
        [
            ShaftSet.Of(1, 2), ShaftSet.Of(3, 4, 5, 6),
            ShaftSet.Of(1, 3, 4, 5), ShaftSet.Of(1, 3, 4, 6), ShaftSet.Of(1, 3, 5, 6), ShaftSet.Of(1, 4, 5, 6),
            ShaftSet.Of(2, 3, 4, 5), ShaftSet.Of(2, 3, 4, 6), ShaftSet.Of(2, 3, 5, 6), ShaftSet.Of(2, 4, 5, 6),
        ],
        2);

    // Two tabbies, and each of six blocks left down with either tie-down: six shafts of pattern over two of ties.
    private readonly TieUpProblem _largeTiedUnit = TieUpProblem.Union(
        [
            ShaftSet.Of(1, 2), ShaftSet.Of(3, 4, 5, 6, 7, 8),
            .. Enumerable.Range(1, 2).SelectMany(tie => Enumerable.Range(3, 6).Select(left => ShaftSet.Of(tie) | ShaftSet.FirstOf(8).Without(ShaftSet.Of(1, 2, left)))),
        ],
        2);

    [Benchmark(Baseline = true)]
    public long PlainPass() => WeaveTimes.Pass(_cloth);

    [Benchmark]
    public LoomFitResult FullWidthFit() => LoomFit.For(_cloth, new LoomLimits(24, 24));

    [Benchmark]
    public TieUpAnswer EveryShedOfFiveShafts() => new BranchAndBoundSearch().Solve(_everyShed);

    [Benchmark]
    public TieUpAnswer TiedUnitOfFourBlocks() => new BranchAndBoundSearch().Solve(_tiedUnit);

    [Benchmark]
    public TieUpAnswer TiedUnitOfSixBlocks() => new BranchAndBoundSearch().Solve(_largeTiedUnit);

    [Benchmark]
    public FaultReport TwoSlipsIn200By200() => FaultFinder.Find(Twill, Slipped);
}
