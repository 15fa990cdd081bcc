using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Ends;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Plans.Setting;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans.Pieces;

/// <summary>The ends on which a piece is woven: the whole warp, or its middle where the piece is clearly narrower.</summary>
/// <param name="Ends">How many.</param>
/// <param name="Runs">Which, from the left.</param>
internal sealed record PieceEnds(Derived<Whole> Ends, ImmutableArray<ThreadRun> Runs)
{
    // Pieces that are wanted within this share of one width are woven on all ends, however their wefts shrink.
    private const double SameWidth = 0.05;

    /// <summary>The ends of a piece.</summary>
    public static PieceEnds Of(
        PlanRequest request, PieceLengths piece, PieceLengths widest, EndsPlan all, WarpSetting setting, ImmutableArray<ThreadRun> runs)
    {
        if (piece.LayerWidth.Value >= widest.LayerWidth.Value * (1 - SameWidth)) return new PieceEnds(all.Total, runs);
        EndsPlan own = EndsReckoning.For(request, piece.WantedReedWidth, setting.Sett, setting.Layers);
        int whole = all.Total.Value.Count;
        int count = Math.Min(own.Total.Value.Count, whole);
        return count == whole ? new PieceEnds(all.Total, runs) : new PieceEnds(own.Total, Middle(runs, (whole - count) / 2, count));
    }

    /// <summary>How many of these ends are of a yarn.</summary>
    public int EndsOf(string yarnId) => Runs.Where(r => r.YarnId == yarnId).Sum(r => r.Threads);

    /// <summary>The yarns of these ends and how many of each.</summary>
    public IReadOnlyList<(Yarn Yarn, int Ends)> Yarns(PlanRequest request) =>
        [.. Runs.GroupBy(r => r.YarnId, StringComparer.Ordinal).Select(g => (request.Shelf.First(y => y.Id == g.Key), g.Sum(r => r.Threads)))];

    private static ImmutableArray<ThreadRun> Middle(ImmutableArray<ThreadRun> runs, int skip, int count)
    {
        var middle = ImmutableArray.CreateBuilder<ThreadRun>();
        foreach (ThreadRun run in runs)
        {
            int skipped = Math.Min(skip, run.Threads);
            skip -= skipped;
            int taken = Math.Min(run.Threads - skipped, count);
            count -= taken;
            if (taken > 0) middle.Add(run with { Threads = taken });
        }

        return middle.ToImmutable();
    }
}
