using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using CsCheck;

namespace Clothwright.Core.Tests.Plans;

public class PlanProperties
{
    private static readonly Gen<PlanRequest> Requests =
        Gen.Select(Gen.Double[5, 50], Gen.Double[30, 400], Gen.Double[0, 20], Gen.Int[1, 4], Gen.Double[0, 30], Gen.Bool).Select((width, length, fringe, count, shrinkage, floating) =>
            EstuaryWarps.OneScarf with
            {
                FloatingSelvedges = floating,
                Allowances = new Allowances { ShrinkageInLength = Ratio.FromPercent(shrinkage) },
                Pieces =
                [
                    EstuaryWarps.Scarf with
                    {
                        Width = Length.FromCentimetres(width),
                        Length = Length.FromCentimetres(length),
                        Count = count,
                        Fringe = fringe < 1 ? FringeStyle.None : FringeStyle.Knotted,
                        FringeLength = Length.FromCentimetres(fringe),
                        Hem = Length.FromCentimetres(2),
                    },
                ],
            });

    [Fact]
    public void A_longer_piece_takes_a_longer_warp_and_more_yarn() => Gen.Select(Requests, Gen.Double[1, 100]).Sample(
        (request, more) =>
        {
            PlanResult shorter = request.Planned();
            PlanResult longer = request.With(request.Pieces[0] with { Length = request.Pieces[0].Length + Length.FromCentimetres(more) }).Planned();
            return longer.WarpLength.Value > shorter.WarpLength.Value && longer.Mass.Value > shorter.Mass.Value && longer.Picks.Value >= shorter.Picks.Value;
        },
        iter: 60);

    [Fact]
    public void More_shrinkage_or_take_up_takes_a_longer_warp() => Gen.Select(Requests, Gen.Double[0.5, 15]).Sample(
        (request, more) =>
        {
            Allowances known = request.Allowances with { WarpTakeUp = Ratio.FromPercent(8) };
            double was = (request with { Allowances = known }).Planned().WarpLength.Value.Metres;
            double shrunk = (request with { Allowances = known with { ShrinkageInLength = Ratio.FromPercent(known.ShrinkageInLength!.Value.Percent + more) } }).Planned().WarpLength.Value.Metres;
            double takenUp = (request with { Allowances = known with { WarpTakeUp = Ratio.FromPercent(8 + more) } }).Planned().WarpLength.Value.Metres;
            return shrunk > was && takenUp > was;
        },
        iter: 60);

    [Fact]
    public void Yarn_is_cloth_fringes_and_waste_and_nothing_else() => Requests.Sample(
        request =>
        {
            PlanResult plan = request.Planned();
            YarnNeed yarn = plan.Yarns.Single();
            double parts = yarn.InPieces.Value.Grams + yarn.Waste.Value.Grams;
            double cloth = plan.Pieces[0].ClothMass.Value.Grams * plan.Pieces[0].Piece.Count;
            return Math.Abs(parts - yarn.Mass.Value.Grams) < 1e-6 && cloth <= yarn.InPieces.Value.Grams + 1e-9;
        },
        iter: 60);

    [Fact]
    public void The_sections_make_up_the_warp_and_the_runs_its_ends() => Requests.Sample(
        request =>
        {
            PlanResult plan = request.Planned();
            return Math.Abs(plan.Sections.Sum(s => s.Warp.Value.Metres) - plan.WarpLength.Value.Metres) < 1e-9
                && plan.WarpRuns.Sum(r => r.Threads) == plan.Ends.Total.Value.Count;
        },
        iter: 60);

    [Fact]
    public void The_finished_length_comes_back_as_wanted() => Requests.Sample(
        request => Math.Abs(request.Planned().Pieces[0].FinishedLength.Value / request.Pieces[0].Length - 1) < 1e-9, iter: 60);

    [Fact]
    public void The_finished_width_is_wanted_within_half_a_repeat_and_the_selvedges() => Requests.Sample(
        request =>
        {
            PlanResult plan = request.Planned();
            double perEnd = plan.Pieces[0].FinishedWidth.Value.Metres / plan.Ends.Total.Value.Count;
            return Math.Abs(plan.Pieces[0].FinishedWidth.Value.Metres - request.Pieces[0].Width.Metres) <= 2.01 * perEnd;
        },
        iter: 60);
}
