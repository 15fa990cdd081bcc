using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Hours;

/// <summary>Guesses the hours at work, step by step.</summary>
internal static class WorkReckoning
{
    private static readonly Rule RateRule = new("time at a rate", "hours = amount ÷ rate", Source.Derivation);

    private static readonly Rule WeavingRule = new("weaving time", "hours = picks ÷ (picks a minute × 60 × speed left)", Source.Derivation);

    private static readonly Rule FinishingRule = new("finishing by hand", "hours = centimetres of hem, seam or fringe × minutes for one ÷ 60", Source.Derivation);

    private static readonly Rule WashingRule = new("washing", "hours = pieces × hours for one", Source.Derivation);

    private static readonly Rule TotalRule = new("hours at work", "sum of the steps", Source.Derivation);

    /// <summary>Hours for a warp.</summary>
    public static WorkEstimate Of(PlanRequest request, Loom loom, Derived<Whole> ends, Derived<Length> warpLength, ImmutableArray<PiecePlan> pieces)
    {
        WorkRates own = request.Rates;
        var steps = ImmutableArray.CreateBuilder<Derived<WorkTime>>();
        Derived<Number> wound = Own("warp wound, metres an hour", own.WarpWoundPerHour?.Metres) ?? CustomaryRates.WarpMetresPerHour;
        steps.Add(Derived.From<WorkTime>("winding the warp", RateRule, ends, warpLength, wound, (n, length, rate) => n * length / rate));
        steps.Add(Rated("threading", ends, Own("ends threaded, an hour", own.EndsThreadedPerHour) ?? CustomaryRates.EndsThreadedPerHour));
        if (loom.Kind != LoomKind.RigidHeddle) steps.Add(Rated("sleying", ends, Own("ends sleyed, an hour", own.EndsSleyedPerHour) ?? CustomaryRates.EndsSleyedPerHour));
        steps.Add(CustomaryRates.Beaming);
        steps.Add(Weaving(own, loom, pieces));
        Add(steps, "fringes", CustomaryRates.FringeMinutesPerCentimetre, pieces.Sum(FringeCentimetres));
        Add(steps, "hems and seams", CustomaryRates.SewingMinutesPerCentimetre, pieces.Sum(SewingCentimetres));
        Derived<Whole> count = Derived.Decision("pieces", Whole.FromCount(pieces.Sum(p => p.Piece.Count)));
        steps.Add(Derived.From<WorkTime>("washing and pressing", WashingRule, count, CustomaryRates.Washing, (n, each) => n * each));
        ImmutableArray<Derived<WorkTime>> all = steps.ToImmutable();
        return new WorkEstimate(all, Derived.Sum("hours at work", TotalRule, all));
    }

    private static Derived<Number>? Own(string label, double? rate) => rate is { } known ? Derived.Given(label, Number.FromValue(known), Source.Measured) : null;

    private static Derived<WorkTime> Rated(string label, Derived<Whole> count, Derived<Number> rate) =>
        Derived.From<WorkTime>(label, RateRule, count, rate, (n, r) => n / r);

    private static Derived<WorkTime> Weaving(WorkRates own, Loom loom, ImmutableArray<PiecePlan> pieces)
    {
        Derived<Number> rate = Own("picks a minute", own.PicksPerMinute) ?? CustomaryRates.PicksPerMinute(loom.Kind);
        int simple = pieces.Where(p => !IsSlow(p)).Sum(p => p.Picks.Value.Count * p.Piece.Count);
        int slow = pieces.Where(IsSlow).Sum(p => p.Picks.Value.Count * p.Piece.Count);
        return Derived.From<WorkTime>(
            "weaving",
            WeavingRule,
            [
                Derived.Decision("picks with one shuttle", Whole.FromCount(simple)),
                Derived.Decision("picks with two shuttles or a clasp", Whole.FromCount(slow)),
                rate,
                CustomaryRates.SecondShuttle,
            ],
            v => (v[0] + v[1] / v[3]) / (v[2] * 60));
    }

    private static bool IsSlow(PiecePlan piece) =>
        !piece.Piece.PatternWeft.IsDefaultOrEmpty || piece.Piece.Weft.Length > 1 || piece.Piece.Weft.Any(r => r.ClaspedWith is not null);

    private static void Add(ImmutableArray<Derived<WorkTime>>.Builder steps, string label, Derived<Number> minutes, double centimetres)
    {
        if (centimetres <= 0) return;
        steps.Add(Derived.From<WorkTime>(
            label, FinishingRule, Derived.Decision($"{label}, centimetres", Number.FromValue(centimetres)), minutes, (length, each) => length * each / 60));
    }

    private static double FringeCentimetres(PiecePlan piece) =>
        piece.Piece.Fringe == FringeStyle.None ? 0 : 2 * piece.FinishedWidth.Value.Centimetres * piece.Piece.Count;

    private static double SewingCentimetres(PiecePlan piece)
    {
        Piece p = piece.Piece;
        double width = piece.FinishedWidth.Value.Centimetres;
        double ends = (p.Hem > Length.Zero ? 2 * width : 0) + (p.EndSeam > Length.Zero || p.Join != RingJoin.None ? (p.Join == RingJoin.None ? 2 : 1) * width : 0);
        double sides = p.SideSeam > Length.Zero ? 2 * p.Length.Centimetres : 0;
        return (ends + sides) * p.Count;
    }
}
