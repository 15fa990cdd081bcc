using System.Collections.Immutable;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Edges;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Layers;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>Finds what is the matter with a draft and where, so that it can be shown in place.</summary>
public static class Troubles
{
    /// <summary>Places kept of each trouble; beyond them they are counted only.</summary>
    public const int MostSpots = 200;

    /// <summary>Everything that is the matter, worst first.</summary>
    /// <param name="draft">A draft that can be woven: one repeat.</param>
    /// <param name="longest">What a float may pass.</param>
    /// <param name="shuttles">Which shuttle throws each pick; one for all if left out.</param>
    /// <param name="layers">Cloths that are meant to lie on each other; 1 for a single cloth.</param>
    public static ImmutableArray<Trouble> Of(Draft draft, FloatAllowance longest, ThreadOrder? shuttles = null, int layers = 1)
    {
        ArgumentNullException.ThrowIfNull(draft);
        Drawdown cloth = draft.Drawdown();
        var found = ImmutableArray.CreateBuilder<Trouble>();
        Unthreaded(draft, found);
        NeverHeld(cloth, ClothLayers.Of(cloth), layers, found);
        Floats(cloth, longest, found);
        Turns(cloth, shuttles, layers, found);
        return found.ToImmutable();
    }

    private static void Unthreaded(Draft draft, ImmutableArray<Trouble>.Builder found)
    {
        int[] ends = [.. Enumerable.Range(0, draft.Ends).Where(e => draft.Threading[e] == ShaftSet.None)];
        Add(TroubleKind.Unthreaded, ends.Select(e => End(e, draft.Picks)), ends.Length, found);
    }

    private static void NeverHeld(Drawdown cloth, ClothLayers layers, int meant, ImmutableArray<Trouble>.Builder found)
    {
        ImmutableArray<int> ends = [.. layers.LooseEnds.Order()];
        ImmutableArray<int> picks = [.. layers.LoosePicks.Order()];
        Add(TroubleKind.NeverHeld, [.. ends.Select(e => End(e, cloth.Picks)), .. picks.Select(p => Pick(p, cloth.Ends))], ends.Length + picks.Length, found);
        if (layers.Layers.Length < 2 || layers.Layers.Length == meant) return;
        found.Add(new Trouble(TroubleKind.Layers, [], 1) { Longest = layers.Layers.Length });
    }

    private static void Floats(Drawdown cloth, FloatAllowance longest, ImmutableArray<Trouble>.Builder found)
    {
        ClothFloats floats = ClothFloats.Of(cloth, ClothReading.Repeat);
        foreach (FloatTally tally in floats.All)
        {
            int allowed = tally.Kind is FloatKind.WarpFace or FloatKind.WarpBack ? longest.Picks : longest.Ends;
            long times = tally.Counts.Where(c => c.Length > allowed).Sum(c => c.Times);
            if (times == 0) continue;
            IEnumerable<TroubleSpot> spots = LongFloats.Of(cloth, tally.Kind, ClothReading.Repeat, allowed)
                .Where(f => !f.Endless)
                .Select(f => f.IsWarp
                    ? new TroubleSpot(new ThreadSpan(f.Line, 1), new ThreadSpan(f.Start, f.Length))
                    : new TroubleSpot(new ThreadSpan(f.Start, f.Length), new ThreadSpan(f.Line, 1)));
            found.Add(new Trouble(TroubleKind.LongFloat, [.. spots.Take(MostSpots)], times) { Float = tally.Kind, Longest = tally.Counts[^1].Length });
        }
    }

    // From the side that misses fewer turns. Where two picks lie in one shed they pull out, whatever the side.
    private static void Turns(Drawdown cloth, ThreadOrder? shuttles, int layers, ImmutableArray<Trouble>.Builder found)
    {
        if (layers > 1) return;
        SelvedgeReport left = SelvedgeReport.Of(cloth, ClothSide.Left, shuttles);
        SelvedgeReport right = SelvedgeReport.Of(cloth, ClothSide.Right, shuttles);
        SelvedgeReport better = right.Missed.Length < left.Missed.Length ? right : left;
        TroubleSpot[] Spots(bool pullsOut) =>
            [.. better.Missed.Where(m => m.PullsOut == pullsOut)
                .Select(m => (Pick: m.Turn.Pick % cloth.Picks, m.Turn.Side, Pulls: m.PullsOut)).Distinct()
                .Select(m => m.Pulls ? Pick(m.Pick, cloth.Ends) : new TroubleSpot(new ThreadSpan(m.Side == ClothSide.Left ? 0 : cloth.Ends - 1, 1), new ThreadSpan(m.Pick, 1)))];
        foreach ((TroubleKind kind, bool pullsOut) in new[] { (TroubleKind.SameShed, true), (TroubleKind.LooseTurn, false) })
        {
            TroubleSpot[] spots = Spots(pullsOut);
            Add(kind, spots, spots.Length, found);
        }
    }

    private static void Add(TroubleKind kind, IEnumerable<TroubleSpot> spots, int times, ImmutableArray<Trouble>.Builder found)
    {
        if (times > 0) found.Add(new Trouble(kind, [.. spots.Take(MostSpots)], times));
    }

    private static TroubleSpot End(int end, int picks) => new(new ThreadSpan(end, 1), new ThreadSpan(0, picks));

    private static TroubleSpot Pick(int pick, int ends) => new(new ThreadSpan(0, ends), new ThreadSpan(pick, 1));
}
