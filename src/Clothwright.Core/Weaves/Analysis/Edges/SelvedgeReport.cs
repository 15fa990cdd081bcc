using System.Collections.Immutable;
using System.Numerics;

namespace Clothwright.Core.Weaves.Analysis.Edges;

/// <summary>How a cloth holds at its edges when the shuttles start from one side.</summary>
/// <param name="Start">The side from which every shuttle starts.</param>
/// <param name="Picks">Picks of one repeat.</param>
/// <param name="Turns">Turns that were followed: those of one repeat, or of two.</param>
/// <param name="Missed">The turns that miss the edge end, in the order of weaving.</param>
public sealed record SelvedgeReport(ClothSide Start, int Picks, int Turns, ImmutableArray<MissedTurn> Missed)
{
    /// <summary>Whether every turn catches its edge end.</summary>
    public bool IsClean => Missed.IsEmpty;

    /// <summary>Whether some pick lies in one shed with the pick before it and pulls out.</summary>
    public bool PullsOut => Missed.Any(m => m.PullsOut);

    /// <summary>0-based picks of one repeat after which a turn is missed, rising.</summary>
    public ImmutableArray<int> LoosePicks => [.. Missed.Select(m => m.Turn.Pick % Picks).Distinct().Order()];

    /// <summary>0-based picks of one repeat after which a turn is missed on one side, rising.</summary>
    /// <param name="side">The side.</param>
    public ImmutableArray<int> LoosePicksAt(ClothSide side) =>
        [.. Missed.Where(m => m.Turn.Side == side).Select(m => m.Turn.Pick % Picks).Distinct().Order()];

    /// <summary>Follows the shuttles and tests each turn: the edge end is caught when one pick passes over it and the next under.</summary>
    /// <param name="cloth">The drawdown at its full width; a repeat only if the cloth is one repeat wide.</param>
    /// <param name="start">The side from which every shuttle starts.</param>
    /// <param name="shuttles">Which shuttle throws each pick; one for all if left out.</param>
    /// <param name="reading">Whether the picks repeat endlessly or end.</param>
    public static SelvedgeReport Of(Drawdown cloth, ClothSide start, ThreadOrder? shuttles = null, ClothReading reading = ClothReading.Repeat)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ImmutableArray<ShuttleTurn> turns = ShuttlePath.Of(cloth.Picks, shuttles ?? ThreadOrder.OneYarn, start, reading);
        var missed = ImmutableArray.CreateBuilder<MissedTurn>();
        foreach (ShuttleTurn turn in turns)
        {
            int pick = turn.Pick % cloth.Picks;
            int next = turn.NextPick % cloth.Picks;
            int ends = Alike(cloth, pick, next, turn.Side);
            if (ends == 0) continue;
            int round = EdgeRun(cloth, pick, turn.Side) + EdgeRun(cloth, next, turn.Side);
            missed.Add(new MissedTurn(turn, ends, ends == cloth.Ends && !HeldBetween(cloth, turn), round));
        }

        return new SelvedgeReport(start, cloth.Picks, turns.Length, missed.ToImmutable());
    }

    // Two picks in one shed cannot be drawn out past a pick of another shuttle between them that lies over one end and under another
    // where they lie the other way: their loop would have to pass it on both faces.
    private static bool HeldBetween(Drawdown cloth, ShuttleTurn turn)
    {
        ReadOnlySpan<ulong> row = cloth.Row(turn.Pick % cloth.Picks);
        int next = turn.NextPick;
        while (next <= turn.Pick) next += cloth.Picks;
        for (int pick = turn.Pick + 1; pick < next; pick++)
        {
            ReadOnlySpan<ulong> other = cloth.Row(pick % cloth.Picks);
            ulong over = 0, under = 0;
            for (int w = 0; w < row.Length; w++)
            {
                over |= row[w] & ~other[w];
                under |= other[w] & ~row[w];
            }

            if (over != 0 && under != 0) return true;
        }

        return false;
    }

    // Ends from the edge inward on which two picks lie alike.
    private static int Alike(Drawdown cloth, int pick, int next, ClothSide side)
    {
        ReadOnlySpan<ulong> a = cloth.Row(pick);
        ReadOnlySpan<ulong> b = cloth.Row(next);
        for (int i = 0; i < a.Length; i++)
        {
            int word = side == ClothSide.Left ? i : a.Length - 1 - i;
            ulong differ = a[word] ^ b[word];
            if (differ == 0) continue;
            return side == ClothSide.Left
                ? word * 64 + BitOperations.TrailingZeroCount(differ)
                : cloth.Ends - 1 - (word * 64 + 63 - BitOperations.LeadingZeroCount(differ));
        }

        return cloth.Ends;
    }

    private static int EdgeRun(Drawdown cloth, int pick, ClothSide side)
    {
        int edge = side == ClothSide.Left ? 0 : cloth.Ends - 1;
        int step = side == ClothSide.Left ? 1 : -1;
        int run = 1;
        while (run < cloth.Ends && cloth[pick, edge + run * step] == cloth[pick, edge]) run++;
        return run;
    }
}
