using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Layers;
using Clothwright.Core.Plans.Needs;
using Clothwright.Core.Plans.Pieces;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Plans.Setting;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans;

public static partial class WarpPlanner
{
    // Pieces of one weave share one drawdown.
    private static Drawdown[] GroundsOf(PlanRequest request)
    {
        Drawdown common = LayerWeave.Ground(request.Weave);
        return [.. request.Pieces.Select(p => p.Weave is { } own ? LayerWeave.Ground(own) : common)];
    }

    private static ThreadSystem WarpThreads(PlanRequest request)
    {
        string[] ids = [.. request.Warp.Runs.Select(r => r.YarnId).Distinct(StringComparer.Ordinal)];
        ImmutableArray<Yarn> yarns = [.. ids.Select(id => request.Shelf.First(y => y.Id == id))];
        return new ThreadSystem(yarns, ThreadOrder.Of([.. request.Warp.Runs.SelectMany(r => Enumerable.Repeat(Array.IndexOf(ids, r.YarnId), r.Threads))]));
    }

    private static ImmutableArray<WeftNeed> SampleWeft(PlanRequest request, PieceCloth cloth, PiecePlan first, int layers)
    {
        if (request.Sample == Length.Zero) return [];
        int ground = layers * (int)Math.Ceiling(cloth.GroundPicks.Value * request.Sample - 1e-9);
        Derived<Length> width = Lengths.DrawIn.ClothWidthOf(first.ReedWidth, cloth.DrawIn);
        return WeftReckoning.For(
            cloth, ground, (int)Math.Round(ground * cloth.PatternPicksPerGroundPick), Derived.Decision("sample", request.Sample), width, request.Allowances.WeftWaste);
    }

    private static ImmutableArray<YarnNeed> YarnNeeds(
        PlanRequest request,
        ImmutableArray<WarpSection> sections,
        Derived<Length> warpLength,
        ImmutableArray<PiecePlan> pieces,
        ImmutableArray<WeftNeed> sample,
        ImmutableArray<ThreadRun> runs,
        PieceEnds[] pieceEnds)
    {
        var reckoning = new YarnReckoning(sections, warpLength, pieces, sample);
        var needs = ImmutableArray.CreateBuilder<YarnNeed>();
        foreach (Yarn yarn in request.Shelf)
        {
            int ends = runs.Where(r => r.YarnId == yarn.Id).Sum(r => r.Threads);
            if (ends == 0 && !reckoning.IsWeft(yarn.Id)) continue;
            needs.Add(reckoning.For(yarn, ends, [.. pieceEnds.Select(p => p.EndsOf(yarn.Id))]));
        }

        return needs.ToImmutable();
    }

    private static Derived<Sett> SettOnLoom(WarpSetting setting) => setting.Layers == 1
        ? setting.Sett
        : Derived.From<Sett>(
            "ends per width in the reed, all layers",
            new Rule("layers", "ends per width of one layer × layers", Source.Derivation),
            setting.Sett,
            Derived.Decision("layers", Whole.FromCount(setting.Layers)),
            (n, layers) => n * layers);

    private static Derived<Whole> Picks(ImmutableArray<PiecePlan> pieces) => Derived.From<Whole>(
        "picks of all pieces",
        new Rule("picks", "sum over the pieces of count × picks", Source.Derivation),
        [.. pieces.Select(p => p.Picks)],
        v => v.Select((n, i) => n * pieces[i].Piece.Count).Sum());

    private static Derived<Ratio> WarpTakeUp(ImmutableArray<PiecePlan> pieces) => pieces.Length == 1 ? pieces[0].WarpTakeUp : Derived.From<Ratio>(
        "warp take-up, all pieces",
        new Rule("mean take-up", "(warp in woven parts − length off the loom) ÷ warp in woven parts", Source.Derivation),
        [.. pieces.Select(p => (IDerived)p.WovenWarp), .. pieces.Select(p => p.OffLoomLength)],
        v =>
        {
            double warp = 0;
            double cloth = 0;
            for (int i = 0; i < pieces.Length; i++)
            {
                warp += v[i] * pieces[i].Piece.Count;
                cloth += v[pieces.Length + i] * pieces[i].Piece.Count;
            }

            return (warp - cloth) / warp;
        });

    private static Derived<Ratio> WeftTakeUp(ImmutableArray<PiecePlan> pieces) => pieces.Length == 1 ? pieces[0].WeftTakeUp : Derived.From<Ratio>(
        "weft take-up, all pieces",
        new Rule("mean take-up", "mean over the pieces, weighted by their picks", Source.Derivation),
        [.. pieces.Select(p => p.WeftTakeUp)],
        v =>
        {
            double all = pieces.Sum(p => (double)p.Picks.Value.Count * p.Piece.Count);
            return v.Select((t, i) => t * pieces[i].Picks.Value.Count * pieces[i].Piece.Count / all).Sum();
        });

    private static Derived<ArealDensity> MassPerArea(ImmutableArray<PiecePlan> pieces)
    {
        if (pieces.Length == 1) return pieces[0].MassPerArea;
        double[] areas = [.. pieces.Select(p => p.ClothMass.Value.Grams * p.Piece.Count / p.MassPerArea.Value.GramsPerSquareMetre)];
        return Derived.From<ArealDensity>(
            "mass per area, all pieces",
            new Rule("mean mass per area", "mean over the pieces, weighted by their area", Source.Derivation),
            [.. pieces.Select(p => p.MassPerArea)],
            v => v.Select((m, i) => m * areas[i]).Sum() / areas.Sum());
    }

    private static Derived<Money>? TotalOf(string label, IReadOnlyList<Derived<Money>?> parts) => parts.Contains(null)
        ? null
        : Derived.Sum(label, new Rule("cost", "sum over the yarns", Source.Derivation), [.. parts.OfType<Derived<Money>>()]);
}
