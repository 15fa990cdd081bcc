using System.Collections.Immutable;
using Clothwright.Core.Weaves;

namespace Clothwright.Benchmarks.Weaves;

/// <summary>Drafts of a full-width cloth on 24 shafts, from a fixed seed.</summary>
internal static class BenchDrafts
{
    public const int Shafts = 24;
    public const int Ends = 2400;
    public const int Picks = 4800;

    /// <summary>A straight draw and 24 lifts by chance, treadled in order: what a loom with treadles weaves.</summary>
    public static Draft Treadled { get; } = new()
    {
        Shafts = Shafts,
        Threading = Straight(Ends),
        TieUp = ByChance(Shafts),
        Treadling = Straight(Picks),
    };

    /// <summary>A straight draw and another lift by chance on every pick: the hardest case, as on a loom moved by a computer.</summary>
    public static Draft Lifted { get; } = new()
    {
        Shafts = Shafts,
        Threading = Straight(Ends),
        LiftPlan = ByChance(Picks),
    };

    /// <summary>As <see cref="Lifted"/>, but threaded by chance, so that nothing repeats in either direction.</summary>
    public static Draft Scattered { get; } = Lifted with { Threading = [.. ThreadedByChance()] };

    private static IEnumerable<ShaftSet> ThreadedByChance()
    {
        var random = new Random(20262);
        for (int end = 0; end < Ends; end++) yield return ShaftSet.Of(random.Next(Shafts) + 1);
    }

    private static ImmutableArray<ShaftSet> Straight(int threads) => [.. Enumerable.Range(0, threads).Select(t => ShaftSet.Of(t % Shafts + 1))];

    private static ImmutableArray<ShaftSet> ByChance(int count)
    {
        var random = new Random(20261);
        ShaftSet all = ShaftSet.FirstOf(Shafts);
        return [.. Enumerable.Range(0, count).Select(_ => new ShaftSet((ulong)random.NextInt64()) & all)];
    }
}
