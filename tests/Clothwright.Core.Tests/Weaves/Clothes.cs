using Clothwright.Core.Weaves;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves;

/// <summary>Makes drawdowns and drafts by chance, from a seed.</summary>
internal static class Clothes
{
    /// <summary>Any drawdown up to a size, each crossing by the toss of a coin.</summary>
    public static Gen<Drawdown> Any(int mostEnds, int mostPicks) =>
        from ends in Gen.Int[1, mostEnds]
        from picks in Gen.Int[1, mostPicks]
        from crossings in Gen.Bool.Array[ends * picks]
        select Drawdown.From(ends, picks, (pick, end) => crossings[pick * ends + end]);

    /// <summary>Drawdowns with long floats: a few distinct ends and picks, in runs.</summary>
    public static Gen<Drawdown> Blocks(int mostEnds, int mostPicks) =>
        from small in Any(6, 6)
        from ends in Gen.Int[1, mostEnds]
        from picks in Gen.Int[1, mostPicks]
        from endRun in Gen.Int[1, 80]
        from pickRun in Gen.Int[1, 40]
        select Drawdown.From(ends, picks, (pick, end) => small[pick / pickRun % small.Picks, end / endRun % small.Ends]);

    /// <summary>Drawdowns made of cloths that lie on each other, their threads shuffled together.</summary>
    public static Gen<Drawdown> Stacks(int mostEnds, int mostPicks) =>
        from ends in Gen.Int[1, mostEnds]
        from picks in Gen.Int[1, mostPicks]
        from endLevel in Gen.Int[0, 3].Array[ends]
        from pickLevel in Gen.Int[0, 3].Array[picks]
        from crossings in Gen.Bool.Array[ends * picks]
        select Drawdown.From(ends, picks, (pick, end) =>
            endLevel[end] == pickLevel[pick] ? crossings[pick * ends + end] : endLevel[end] < pickLevel[pick]);

    /// <summary>Any draft: several shafts an end and treadles a pick, none too, either shed, sometimes by lift plan.</summary>
    public static Gen<Draft> Drafts(int mostShafts = 8, int mostThreads = 40) =>
        from shafts in Gen.Int[1, mostShafts]
        from treadles in Gen.Int[1, mostShafts]
        from threading in Sets(shafts).Array[1, mostThreads]
        from tieUp in Sets(shafts).Array[treadles]
        from treadling in Sets(treadles).Array[1, mostThreads]
        from rising in Gen.Bool
        from byPlan in Gen.Bool
        let tied = new Draft
        {
            Shafts = shafts,
            Threading = [.. threading],
            TieUp = [.. tieUp],
            Treadling = [.. treadling],
            RisingShed = rising,
        }
        select byPlan ? tied with { TieUp = [], Treadling = [], LiftPlan = [.. Enumerable.Range(0, tied.Picks).Select(tied.Lift)] } : tied;

    /// <summary>A drawdown by its rows.</summary>
    public static Drawdown Of(string rows) => Drawdown.Parse(rows).Value;

    // Mostly one member, sometimes none, two or any.
    private static Gen<ShaftSet> Sets(int highest) => Gen.Frequency(
        (6, Gen.Int[1, highest].Select(n => ShaftSet.Of(n))),
        (1, Gen.Const(ShaftSet.None)),
        (2, Gen.ULong.Select(bits => new ShaftSet(bits) & ShaftSet.FirstOf(highest))));
}
