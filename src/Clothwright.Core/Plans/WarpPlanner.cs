using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Cautions;
using Clothwright.Core.Plans.Checks;
using Clothwright.Core.Plans.Ends;
using Clothwright.Core.Plans.Hours;
using Clothwright.Core.Plans.Layers;
using Clothwright.Core.Plans.Lengths;
using Clothwright.Core.Plans.Needs;
using Clothwright.Core.Plans.Pieces;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Plans.Setting;
using Clothwright.Core.Plans.Warnings;
using Clothwright.Core.Plans.Wefts;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans;

/// <summary>Plans a warp: from the decisions to everything that is wound, threaded, woven and paid for.</summary>
public static partial class WarpPlanner
{
    /// <summary>Plans a warp.</summary>
    /// <param name="request">The decisions.</param>
    /// <returns>The plan, or the first problem in the decisions.</returns>
    public static Parsed<PlanResult> Plan(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (RequestCheck.Problem(request) is { } problem) return problem;
        try
        {
            return Reckon(request);
        }
        catch (InputProblemException refusal)
        {
            return refusal.Problem;
        }
    }

    private static PlanResult Reckon(PlanRequest request)
    {
        Loom loom = request.Bench.Looms.First(l => l.Id == request.LoomId);
        int layers = request.Pieces[0].Make.Layers();
        if (LoomCheck.Shafts(loom, request.Weave, layers) is { } shafts) throw new InputProblemException(shafts);

        Drawdown[] grounds = GroundsOf(request);
        ThreadSystem warp = WarpThreads(request);
        ThreadSystem firstWeft = WeftSystem.Of(request, request.Pieces[0].Weft, "pieces[0].weft").Threads;
        var choice = SettChoice.Of(request, loom, layers, warp, firstWeft, grounds[0], request.Pieces.Any(p => p.Fulled));
        var setting = new WarpSetting(request, loom, layers, warp, choice.Sett);
        ImmutableArray<PieceCloth> cloths = [.. request.Pieces.Select((_, i) => PieceCloth.Of(setting, i, grounds[i]))];
        ImmutableArray<PieceLengths> lengths = [.. request.Pieces.Select((p, i) => PieceLengths.Of(p, cloths[i]))];

        int widest = Enumerable.Range(0, lengths.Length).MaxBy(i => lengths[i].WantedReedWidth.Value.Metres);
        EndsPlan ends = EndsReckoning.For(request, lengths[widest].WantedReedWidth, setting.Sett, layers);
        Derived<Length> reedWidth = EndsReckoning.ReedWidth(ends.Total, setting.Sett, layers);
        if (LoomCheck.Width(loom, reedWidth.Value, widest) is { } width) throw new InputProblemException(width);

        ImmutableArray<ThreadRun> runs = WarpLayout.Lay(request.Warp, ends.Total.Value.Count, (ends.SelvedgeEnds + ends.FloatingSelvedges) / 2);
        ImmutableArray<WarpSection> sections = WarpSections.Of(request, loom, cloths, lengths);
        Derived<Length> warpLength = Derived.Sum("warp length", WarpSections.LengthRule, [.. sections.Select(s => s.Warp)]);
        PieceEnds[] pieceEnds = [.. lengths.Select(l => PieceEnds.Of(request, l, lengths[widest], ends, setting, runs))];
        ImmutableArray<PiecePlan> pieces =
            [.. request.Pieces.Select((_, i) => PieceReckoning.Of(setting, i, cloths[i], lengths[i], pieceEnds[i].Ends, pieceEnds[i].Yarns(request)))];
        ImmutableArray<WeftNeed> sample = SampleWeft(request, cloths[0], pieces[0], layers);
        ImmutableArray<YarnNeed> yarns = YarnNeeds(request, sections, warpLength, pieces, sample, runs, pieceEnds);
        WorkEstimate work = WorkReckoning.Of(request, loom, ends.Total, warpLength, pieces);
        Draft loomDraft = LayeredDraft.Of(request.Weave, request.Pieces[0].Make);

        var plan = new PlanResult
        {
            Request = request,
            Loom = loom,
            LoomDraft = loomDraft,
            Ends = ends,
            WarpRuns = runs,
            Reed = choice.Reed,
            SettAdvice = choice.Advice,
            Sett = SettOnLoom(setting),
            ReedWidth = reedWidth,
            Sections = sections,
            WarpLength = warpLength,
            WarpTakeUp = WarpTakeUp(pieces),
            WeftTakeUp = WeftTakeUp(pieces),
            Picks = Picks(pieces),
            Pieces = pieces,
            Yarns = yarns,
            MassPerArea = MassPerArea(pieces),
            Mass = Derived.Sum("mass of all yarn", new Rule("mass of all yarn", "sum over the yarns", Source.Derivation), [.. yarns.Select(y => y.Mass)]),
            Work = work,
            Cost = TotalOf("cost of the yarn used", [.. yarns.Select(y => y.Cost)]),
            Purchase = TotalOf("cost of the packages to buy", [.. yarns.Select(y => y.Packages.Cost)]),
            Warnings =
            [
                .. WarpYarnWarnings.Of(request),
                .. WeftYarnWarnings.Of(request),
                .. ShrinkageWarnings.Of(warp, cloths),
                .. SettWarnings.Of(request, choice),
                .. EndsWarnings.Of(request, ends, pieces),
                .. WeaveWarnings.Of(request, loom, layers, loomDraft, ClothAnalysis.Of(LayerWeave.WithShuttles(request.Weave), request.Weave.Layers)),
                .. PieceWarnings.Of(pieces),
                .. PuckeringWarnings.Of(pieces),
                .. StockWarnings.Of(request, yarns),
            ],
            Cautions = CautionList.Of(request, pieces, yarns, work),
        };
        return plan with { Figures = FigureList.Of(plan) };
    }
}
