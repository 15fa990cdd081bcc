using System.Collections.Immutable;
using Clothwright.Core.Weaves.Analysis.Layers;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>The smallest change that makes a cloth weavable on a smaller loom: some ends, then some picks, are made like others.</summary>
/// <param name="Cloth">The changed cloth.</param>
/// <param name="Ends">Ends that change, each with the end whose shaft it takes; 0-based, by rising end.</param>
/// <param name="Picks">Picks that change, each with the pick whose lift it takes; 0-based, by rising pick.</param>
/// <param name="CrossingsChanged">Crossings where the two cloths differ.</param>
/// <param name="Proved">Whether no smaller change of this kind would do; ends are settled before picks.</param>
public sealed record DraftReduction(
    Drawdown Cloth,
    ImmutableArray<(int End, int Like)> Ends,
    ImmutableArray<(int Pick, int Like)> Picks,
    int CrossingsChanged,
    bool Proved)
{
    /// <summary>Finds the smallest change to a number of different ends and of different picks.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="shafts">Different ends allowed, 1 or more.</param>
    /// <param name="lifts">Different picks allowed, 1 or more; <see cref="int.MaxValue"/> for any number.</param>
    /// <param name="aim">What is kept small.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1 is allowed.</exception>
    public static DraftReduction To(Drawdown cloth, int shafts, int lifts = int.MaxValue, ReductionAim aim = ReductionAim.FewestEnds)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(shafts, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(lifts, 1);
        var lines = new ClothKinds(cloth);
        var endChoice = KeptLines.Choose(
            lines.EndTimes,
            (a, b) => Enumerable.Range(0, lines.PickKinds).Sum(p => lines.Up(p, a) != lines.Up(p, b) ? lines.PickTimes[p] : 0),
            shafts, aim);
        int[] likeEnd = [.. lines.EndKind.Select((kind, end) => endChoice.Like[kind] == kind ? end : lines.FirstEnd[endChoice.Like[kind]])];
        Drawdown narrowed = Drawdown.From(cloth.Ends, cloth.Picks, (pick, end) => cloth[pick, likeEnd[end]]);

        var after = new ClothKinds(narrowed);
        var pickChoice = KeptLines.Choose(
            after.PickTimes,
            (a, b) => Enumerable.Range(0, after.EndKinds).Sum(e => after.Up(a, e) != after.Up(b, e) ? after.EndTimes[e] : 0),
            lifts, aim);
        int[] likePick = [.. after.PickKind.Select((kind, pick) => pickChoice.Like[kind] == kind ? pick : after.FirstPick[pickChoice.Like[kind]])];
        Drawdown result = Drawdown.From(cloth.Ends, cloth.Picks, (pick, end) => narrowed[likePick[pick], end]);

        return new DraftReduction(
            result,
            [.. likeEnd.Select((like, end) => (end, like)).Where(m => m.end != m.like)],
            [.. likePick.Select((like, pick) => (pick, like)).Where(m => m.pick != m.like)],
            Differences(cloth, result),
            endChoice.Proved && pickChoice.Proved);
    }

    /// <summary>Finds the smallest change after which a cloth that hangs together still does, as far as either aim gives one; else the change of fewest ends.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="shafts">Different ends allowed, 1 or more.</param>
    /// <param name="lifts">Different picks allowed, 1 or more; <see cref="int.MaxValue"/> for any number.</param>
    public static DraftReduction Sound(Drawdown cloth, int shafts, int lifts = int.MaxValue)
    {
        DraftReduction change = To(cloth, shafts, lifts);
        if (ClothLayers.Of(change.Cloth).HangsTogether || !ClothLayers.Of(cloth).HangsTogether) return change;
        DraftReduction other = To(cloth, shafts, lifts, ReductionAim.FewestCrossings);
        return ClothLayers.Of(other.Cloth).HangsTogether ? other : change;
    }

    /// <summary>The change in words, with ends and picks numbered from 1.</summary>
    public string InWords
    {
        get
        {
            if (Ends.IsEmpty && Picks.IsEmpty) return "Nothing needs to change.";
            var parts = new List<string>();
            if (!Ends.IsEmpty) parts.Add($"thread {Counted(Ends.Length, "end")} otherwise ({Listed(Ends.Select(m => (m.End, m.Like)), "like end")})");
            if (!Picks.IsEmpty) parts.Add($"treadle {Counted(Picks.Length, "pick")} otherwise ({Listed(Picks.Select(m => (m.Pick, m.Like)), "like pick")})");
            string text = string.Join(" and ", parts);
            return $"The smallest change {(Proved ? "" : "found ")}that would do: {text}; {CrossingsChanged} of {Cloth.Ends * Cloth.Picks} crossings change.";
        }
    }

    internal static int Differences(Drawdown one, Drawdown other)
    {
        int sum = 0;
        for (int pick = 0; pick < one.Picks; pick++)
        {
            ReadOnlySpan<ulong> a = one.Row(pick), b = other.Row(pick);
            for (int w = 0; w < a.Length; w++) sum += System.Numerics.BitOperations.PopCount(a[w] ^ b[w]);
        }

        return sum;
    }

    private static string Counted(int count, string thing) => count == 1 ? $"1 {thing}" : $"{count} {thing}s";

    // A dozen moves are enough to see what happens.
    private static string Listed(IEnumerable<(int Line, int Like)> moves, string like)
    {
        var groups = moves.GroupBy(m => m.Like).Select(g =>
            $"{string.Join(", ", g.Take(12).Select(m => m.Line + 1))}{(g.Count() > 12 ? " …" : "")} {like} {g.Key + 1}").ToList();
        return string.Join("; ", groups.Take(12)) + (groups.Count > 12 ? "; …" : "");
    }
}
