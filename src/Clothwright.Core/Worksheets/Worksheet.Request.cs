using System.Collections.Immutable;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Worksheets;

public sealed partial record Worksheet
{
    /// <summary>The decisions as the planner takes them: counts read, fibres looked up, weaves made.</summary>
    /// <returns>The request, or the first thing on the worksheet that cannot be understood.</returns>
    public Parsed<PlanRequest> ToRequest()
    {
        try
        {
            return new PlanRequest
            {
                Title = Title,
                Units = Units,
                Bench = new Bench([.. Looms.Select(l => l.ToLoom())], Reeds, Heddles),
                LoomId = LoomId,
                Shelf = [.. Shelf.Select((y, i) => y.ToYarn($"shelf[{i}]").Value)],
                Pieces = [.. Pieces.Select(ToPiece)],
                Weave = Weave.Resolve().Value,
                Warp = Warp,
                Purpose = Purpose,
                ChosenSett = Sett,
                ChosenReed = Reed,
                EndsFit = EndsFit,
                SelvedgeEnds = SelvedgeEnds,
                FloatingSelvedges = FloatingSelvedges,
                Sample = Sample,
                Header = Header,
                Gap = Gap,
                Allowances = Allowances,
                Rates = Rates,
            };
        }
        catch (InputProblemException refusal)
        {
            return refusal.Problem;
        }
    }

    /// <summary>The plan that follows from the worksheet.</summary>
    /// <returns>The plan, or the first problem on the worksheet.</returns>
    public Parsed<PlanResult> Plan()
    {
        Parsed<PlanRequest> request = ToRequest();
        return request.TryGet(out PlanRequest? decisions) ? WarpPlanner.Plan(decisions) : request.Problem!;
    }

    private static Piece ToPiece(PieceEntry entry, int index) => entry.Weave is { } own
        ? entry.Piece with { Weave = own.Resolve($"pieces[{index}].weave").Value }
        : entry.Piece;
}
