using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Cloths;
using Clothwright.Core.Cloths.Faces;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Colours;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans.WeftChoice;

/// <summary>Looks through the shelf for the weft that serves a warp best, by planning the piece with each.</summary>
public static class WeftChooser
{
    // Of all pairs of yarns only the likeliest are planned whole.
    private const int LikeliestPairs = 24;

    // Up to this share of difference a weft lies as the present one does; past it the cloth is another.
    private const double LikeThickness = 0.35;

    /// <summary>The best wefts for a piece, the best first.</summary>
    /// <param name="plan">The plan as it stands.</param>
    /// <param name="pieceIndex">Place of the piece; 0-based.</param>
    /// <param name="aim">What is wanted.</param>
    /// <param name="most">How many are told at most.</param>
    /// <param name="pairs">Whether two yarns pick by pick in turn are looked at too.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such piece.</exception>
    public static ImmutableArray<WeftProposal> Propose(PlanResult plan, int pieceIndex, WeftAim aim, int most = 6, bool pairs = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentOutOfRangeException.ThrowIfNegative(pieceIndex);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(pieceIndex, plan.Pieces.Length);
        PlanRequest held = Held(plan);
        Piece piece = plan.Request.Pieces[pieceIndex];
        List<WeftProposal> found = [];
        foreach (ImmutableArray<WeftRun> weft in Wefts(plan, pieceIndex, aim, pairs))
        {
            if (Plan(held, pieceIndex, weft) is not { } made) continue;
            found.Add(Proposal(made, plan, pieceIndex, weft, aim, weft.SequenceEqual(piece.Weft)));
        }

        return [.. found.OrderByDescending(p => Worth(p, aim)).Take(most)];
    }

    // The warp is on the loom: its sett and its reed stay.
    private static PlanRequest Held(PlanResult plan)
    {
        int layers = plan.Request.Pieces[0].Make.Layers();
        return plan.Request with { ChosenSett = plan.Request.ChosenSett ?? Sett.FromPerMetre(plan.Sett.Value.PerMetre / layers) };
    }

    private static IEnumerable<ImmutableArray<WeftRun>> Wefts(PlanResult plan, int pieceIndex, WeftAim aim, bool pairs)
    {
        ImmutableArray<Yarn> shelf = plan.Request.Shelf;
        int strands = plan.Request.Pieces[pieceIndex].Weft[0].Strands;
        foreach (Yarn yarn in shelf) yield return [new WeftRun(yarn.Id, 1) { Strands = strands }];
        if (!pairs) yield break;
        FusedFace face = plan.Pieces[pieceIndex].Cloth.Washed.FusedColours().Face;
        IEnumerable<(Yarn One, Yarn Other)> all = shelf.SelectMany((one, i) => shelf.Skip(i + 1).Select(other => (one, other)));
        foreach ((Yarn one, Yarn other) in all.OrderByDescending(p => Promise(face, p.One, p.Other, aim)).Take(LikeliestPairs))
        {
            yield return [new WeftRun(one.Id, 1) { Strands = strands }, new WeftRun(other.Id, 1) { Strands = strands }];
        }
    }

    // A first look by the mixed light alone.
    private static double Promise(FusedFace face, Yarn one, Yarn other, WeftAim aim)
    {
        LinearColour weft = (LinearColour.From(one.Colour) + LinearColour.From(other.Colour)) * 0.5;
        return aim is { Kind: WeftAimKind.Colour, Wanted: { } wanted }
            ? -OkLab.From(face.Warp * face.Shares.Warp + weft * (1 - face.Shares.Warp)).DistanceTo(OkLab.From(LinearColour.From(wanted)))
            : OkLab.From(face.Warp).DistanceTo(OkLab.From(weft));
    }

    private static PlanResult? Plan(PlanRequest held, int pieceIndex, ImmutableArray<WeftRun> weft) =>
        WarpPlanner.Plan(held with { Pieces = held.Pieces.SetItem(pieceIndex, held.Pieces[pieceIndex] with { Weft = weft }) }).TryGet(out PlanResult? plan) ? plan : null;

    private static WeftProposal Proposal(PlanResult made, PlanResult present, int pieceIndex, ImmutableArray<WeftRun> weft, WeftAim aim, bool isPresent)
    {
        PiecePlan piece = made.Pieces[pieceIndex];
        ClothGeometry cloth = piece.Cloth.Washed;
        FusedColours colours = cloth.FusedColours();
        ImmutableArray<Yarn> yarns = [.. weft.Select(r => made.Request.Shelf.First(y => y.Id == r.YarnId))];
        double now = present.Pieces[pieceIndex].Cloth.Washed.WeftDiameter.Value.Metres;
        var proposal = new WeftProposal
        {
            Yarns = yarns,
            Weft = weft,
            Piece = piece,
            Colours = colours,
            FaceDifference = aim.Wanted is { } wanted ? ColourDifference.Ciede2000(CieLab.From(colours.Face.Colour), CieLab.From(wanted)) : null,
            Legibility = PatternLegibility.Of(cloth, front: true, PatternLegibility.ArmsLength),
            Shimmer = ClothShimmer.Of(cloth),
            ThicknessDifference = Math.Abs(cloth.WeftDiameter.Value.Metres - now) / now,
            Short = Short(made, yarns),
            IsPresent = isPresent,
            Reasons = [],
        };
        return proposal with { Reasons = [.. ReasonsFor(proposal)] };
    }

    private static Mass Short(PlanResult plan, ImmutableArray<Yarn> yarns) => Mass.FromGrams(plan.Yarns
        .Where(n => yarns.Any(y => y.Id == n.Yarn.Id))
        .Sum(n => Math.Max(0, n.Packages.Needed.Value.Grams - n.Packages.FromShelf.Sum(u => u.Used.Grams))));

    private static IEnumerable<string> ReasonsFor(WeftProposal proposal)
    {
        FusedColours colours = proposal.Colours;
        yield return $"Face {ColourWords.Of(colours.Face.Colour)}, back {ColourWords.Of(colours.Back.Colour)} from afar.";
        if (proposal.FaceDifference is { } apart) yield return $"The face is {Number(apart)} from the wanted colour (CIEDE2000; measured cloths differ by 3 to 5 from what is foreseen).";
        yield return proposal.Legibility.Words;
        if (proposal.Shimmer.Value.Value >= 2) yield return $"Its colour moves by {Number(proposal.Shimmer.Value.Value)} as the light turns.";
        if (proposal.ThicknessDifference > LikeThickness) yield return "Its thickness is far from that of the present weft: the cloth will be another; sample it.";
        if (proposal.Short > Mass.Zero) yield return $"The shelf lacks {Number(proposal.Short.Grams)} g of it.";
    }

    // One scale for all: what is wanted, less what it costs in another cloth and in yarn that is not there. Our own judgement.
    private static double Worth(WeftProposal proposal, WeftAim aim)
    {
        double wanted = aim.Kind switch
        {
            WeftAimKind.Clear => proposal.Legibility.NoticedDifferences.Value.Value,
            WeftAimKind.Shimmer => proposal.Shimmer.Value.Value / 4,
            _ => -proposal.FaceDifference!.Value / 4,
        };
        return wanted - Math.Max(0, proposal.ThicknessDifference - LikeThickness) * 2 - (proposal.Short > Mass.Zero ? 0.5 : 0) - (proposal.Yarns.Length - 1) * 0.1;
    }

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
