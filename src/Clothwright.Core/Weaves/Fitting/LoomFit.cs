using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>Fits a cloth to a loom: fewest shafts, then fewest treadles.</summary>
public static partial class LoomFit
{
    private static readonly Rule ShaftRule = new(
        "one shaft for each different end", "shafts = different columns of the drawdown; an end that never moves needs none", Source.Derivation);

    private static readonly Rule SharedShaftRule = new(
        "ends on several shafts", "fewest shafts such that each end moves if any of its shafts moves", Source.Derivation);

    private static readonly Rule BalancedShaftRule = new(
        "shafts in balance", "fewest shafts such that as many rise as sink in every shed", Source.Derivation);

    private static readonly Rule DirectRule = new(
        "one treadle for each different lift", "treadles = different lifts; a lift of no shaft needs none", Source.Derivation);

    private static readonly Rule UnionRule = new(
        "shared tie-up", "fewest treadles such that each lift is the sum of those pressed", Source.Derivation);

    private static readonly Rule CountermarcheRule = new(
        "countermarche tie-up", "fewest treadles such that each shaft is tied up or down in exactly one of those pressed", Source.Derivation);

    /// <summary>Fits the cloth of a draft.</summary>
    /// <inheritdoc cref="For(Drawdown, LoomLimits, ITieUpSearch?)" />
    /// <param name="draft">The draft; its own threading and tie-up do not bind the answer.</param>
    /// <param name="limits">The loom.</param>
    /// <param name="search">How the fewest treadles are found; branch and bound within its usual steps if left out.</param>
    public static LoomFitResult For(Draft draft, LoomLimits limits, ITieUpSearch? search = null)
    {
        LoomFitResult fit = For(draft.Drawdown(), limits, search);
        return fit.Draft is null
            ? fit
            : fit with { Draft = fit.Draft with { Name = draft.Name, WarpOrder = draft.WarpOrder, WeftOrder = draft.WeftOrder } };
    }

    /// <summary>Fits a cloth.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="limits">The loom.</param>
    /// <param name="search">How the fewest treadles are found; branch and bound within its usual steps if left out.</param>
    /// <exception cref="InputProblemException">There is no such loom.</exception>
    public static LoomFitResult For(Drawdown cloth, LoomLimits limits, ITieUpSearch? search = null)
    {
        if (limits.Problem() is { } problem) throw new InputProblemException(problem);
        search ??= new BranchAndBoundSearch();
        var lines = new ClothKinds(cloth);
        var reasons = new List<string>();
        ShaftLayout? layout = LayShafts(lines, limits, search, reasons);
        if (layout is null) return TooMany(lines, limits, reasons);

        reasons.AddRange(layout.Notes);
        bool shaftsFit = layout.Shafts <= limits.Shafts;
        if (!shaftsFit) reasons.Add(CannotShafts(layout.Shafts, limits));
        bool shedsFit = CheckSheds(layout, lines, limits, reasons);
        LoomFitResult fit = limits.Shed == ShedAction.Levers
            ? OnLevers(layout, lines)
            : OnTreadles(layout, lines, limits, search, reasons);
        bool treadlesFit = limits.Shed == ShedAction.Levers || fit.Treadles.Value.Count <= limits.Treadles;
        bool feasible = shaftsFit && shedsFit && treadlesFit;
        if (feasible) reasons.Insert(0, $"It can be woven as it is on {limits.InWords}.");
        DraftReduction? change = feasible ? null : Change(lines, limits, fit, reasons);
        return fit with { Feasible = feasible, SmallestChange = change, Reasons = [.. reasons] };
    }

    private static LoomFitResult OnLevers(ShaftLayout layout, ClothKinds lines)
    {
        ImmutableArray<ShaftSet> plan = [.. lines.PickKind.Select(layout.Up)];
        return new LoomFitResult
        {
            Feasible = true,
            Draft = new Draft { Shafts = Math.Max(1, layout.Shafts), Threading = layout.Threading, LiftPlan = plan },
            Shafts = ShaftCount(layout, lines, ShaftRule),
            Treadles = Derived.Given("treadles", Whole.FromCount(0), Source.Derivation, formula: "levers lift each shaft by itself"),
            DirectTreadles = layout.Moved.Count(l => l.Bits != 0),
            TreadlesAtLeast = 0,
            LiftPlan = plan,
            Optimal = layout.Proved,
            Reasons = [],
        };
    }

    private static LoomFitResult OnTreadles(
        ShaftLayout layout, ClothKinds lines, LoomLimits limits, ITieUpSearch search, List<string> reasons)
    {
        bool countermarche = limits.Shed == ShedAction.Countermarche;
        int[] pressing = [.. Enumerable.Range(0, layout.Moved.Length).Where(k => countermarche || layout.Moved[k].Bits != 0)];
        ShaftSet[] wanted = [.. pressing.Select(k => layout.Moved[k]).Distinct()];
        TieUpProblem problem = countermarche
            ? TieUpProblem.Countermarche(wanted, layout.Shafts, limits.Feet)
            : TieUpProblem.Union(wanted, limits.Feet);
        TieUpAnswer answer = search.Solve(problem);
        if (answer.Chosen.Length >= wanted.Length)
        {
            answer = TieUpAnswer.Direct(problem, answer.AtLeast) with { Proved = answer.Proved, Steps = answer.Steps };
        }

        var derived = Derived.From<Whole>(
            "treadles",
            wanted.Length == answer.Chosen.Length ? DirectRule : countermarche ? CountermarcheRule : UnionRule,
            Derived.Given("different lifts", Whole.FromCount(wanted.Length), Source.Derivation, formula: "different rows of the drawdown"),
            _ => answer.Chosen.Length);
        reasons.Add(TreadleSentence(wanted.Length, answer, limits));
        var draftless = new LoomFitResult
        {
            Feasible = true,
            Shafts = ShaftCount(layout, lines, limits.Shed == ShedAction.Counterbalance ? BalancedShaftRule : ShaftRule),
            Treadles = derived,
            DirectTreadles = wanted.Length,
            TreadlesAtLeast = answer.AtLeast,
            LiftPlan = [.. lines.PickKind.Select(layout.Up)],
            Optimal = layout.Proved && answer.Proved,
            Reasons = [],
        };
        if (answer.Chosen.Length > ShaftSet.Highest) return draftless;

        ImmutableArray<ShaftSet> presses = answer.Presses(problem);
        var byLift = wanted.Select((lift, i) => (lift, i)).ToDictionary(p => p.lift, p => presses[p.i]);
        ImmutableArray<ShaftSet> treadling = [.. lines.PickKind.Select(k => byLift.GetValueOrDefault(layout.Moved[k]))];
        TreadleWalk walk = TreadleWalk.Lay(answer.Chosen.Length, treadling);
        var ties = new TreadleTie[answer.Chosen.Length];
        for (int t = 0; t < ties.Length; t++)
        {
            TreadleTie tie = problem.Candidates[answer.Chosen[t]];
            ties[walk.Order[t] - 1] = layout.Sinking ? new TreadleTie(ShaftSet.None, tie.Up) : tie;
        }

        treadling = [.. treadling.Select(p => ShaftSet.Of([.. p.Members().Select(t => walk.Order[t - 1])]))];
        reasons.Add(WalkSentence(walk));
        return draftless with
        {
            TieUp = [.. ties],
            Treadling = treadling,
            Walk = walk,
            Draft = new Draft
            {
                Shafts = Math.Max(1, layout.Shafts),
                Threading = layout.Threading,
                TieUp = [.. ties.Select(t => layout.Sinking ? t.Down : t.Up)],
                Treadling = treadling,
                RisingShed = !layout.Sinking,
            },
        };
    }

    private static Derived<Whole> ShaftCount(ShaftLayout layout, ClothKinds lines, Rule rule) => Derived.From<Whole>(
        "shafts",
        layout.Threading.Any(e => e.Count > 1) ? SharedShaftRule : rule,
        Derived.Given("different ends", Whole.FromCount(lines.EndKinds), Source.Derivation, formula: "different columns of the drawdown"),
        _ => layout.Shafts);
}
