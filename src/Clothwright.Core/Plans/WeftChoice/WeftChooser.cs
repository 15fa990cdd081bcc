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
    internal const double LikeThickness = 0.35;

    /// <summary>The best wefts for a piece, the best first.</summary>
    /// <param name="plan">The plan as it stands.</param>
    /// <param name="pieceIndex">Place of the piece; 0-based.</param>
    /// <param name="aim">What is wanted.</param>
    /// <param name="most">How many are told at most.</param>
    /// <param name="pairs">Whether two yarns pick by pick in turn are looked at too.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such piece.</exception>
    public static ImmutableArray<WeftProposal> Propose(PlanResult plan, int pieceIndex, WeftAim aim, int most = 6, bool pairs = false)
    {
        return Ranked(Each(plan, pieceIndex, aim, pairs).OfType<WeftProposal>(), aim, most);
    }

    /// <summary>Every weft that is looked at, one after the other and worked out only when it is asked for: for who shows how far the search is.</summary>
    /// <param name="plan">The plan as it stands.</param>
    /// <param name="pieceIndex">Place of the piece; 0-based.</param>
    /// <param name="aim">What is wanted.</param>
    /// <param name="pairs">Whether two yarns pick by pick in turn are looked at too.</param>
    /// <returns>A proposal for each; null where the piece cannot be planned with it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such piece.</exception>
    public static IEnumerable<WeftProposal?> Each(PlanResult plan, int pieceIndex, WeftAim aim, bool pairs = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentOutOfRangeException.ThrowIfNegative(pieceIndex);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(pieceIndex, plan.Pieces.Length);
        PlanRequest held = Held(plan);
        Piece piece = plan.Request.Pieces[pieceIndex];
        return Wefts(plan, pieceIndex, aim, pairs).Select(weft => Plan(held, pieceIndex, weft) is { } made
            ? Proposal(made, plan, pieceIndex, weft, aim, weft.SequenceEqual(piece.Weft))
            : null);
    }

    /// <summary>How many wefts <see cref="Each"/> looks at.</summary>
    /// <param name="plan">The plan as it stands.</param>
    /// <param name="pairs">Whether two yarns pick by pick in turn are looked at too.</param>
    public static int Count(PlanResult plan, bool pairs)
    {
        ArgumentNullException.ThrowIfNull(plan);
        int yarns = plan.Request.Shelf.Length;
        return yarns + (pairs ? Math.Min(LikeliestPairs, yarns * (yarns - 1) / 2) : 0);
    }

    /// <summary>Proposals, the best first.</summary>
    /// <param name="proposals">The proposals, in any order.</param>
    /// <param name="aim">What is wanted.</param>
    /// <param name="most">How many are told at most.</param>
    public static ImmutableArray<WeftProposal> Ranked(IEnumerable<WeftProposal> proposals, WeftAim aim, int most) =>
        [.. proposals.OrderByDescending(p => Worth(p, aim)).Take(most)];

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
        if (proposal.IsAnotherCloth) yield return "Its thickness is far from that of the present weft: the cloth will be another; sample it.";
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
