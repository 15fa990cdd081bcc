using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

public sealed partial record Weave
{
    /// <summary>One repeat from a threading and the shafts that each pick lifts.</summary>
    /// <remarks>Treadles are numbered by first use; an empty lift presses none. With more than 64 lifts a lift plan stands in.</remarks>
    /// <param name="name">Trade name with its figures.</param>
    /// <param name="rule">The rule.</param>
    /// <param name="threading">The shaft of each end, from 1.</param>
    /// <param name="lifts">The shafts each pick lifts.</param>
    internal static Weave FromLifts(string name, Rule rule, IReadOnlyList<int> threading, IReadOnlyList<ShaftSet> lifts)
    {
        var treadleOf = new Dictionary<ShaftSet, int>();
        foreach (ShaftSet lift in lifts)
        {
            if (lift.Count > 0) treadleOf.TryAdd(lift, treadleOf.Count + 1);
        }

        if (treadleOf.Count <= ShaftSet.Highest)
        {
            return FromTreadles(
                name,
                rule,
                threading,
                [.. treadleOf.OrderBy(t => t.Value).Select(t => t.Key)],
                [.. lifts.Select(l => l.Count == 0 ? 0 : treadleOf[l])]);
        }

        return FromDraft(name, rule, new Draft
        {
            Name = name,
            Shafts = ShaftsIn(threading, lifts),
            Threading = [.. threading.Select(s => ShaftSet.Of(s))],
            LiftPlan = [.. lifts],
        });
    }

    /// <summary>One repeat from a threading, a tie-up and one treadle a pick.</summary>
    /// <param name="name">Trade name with its figures.</param>
    /// <param name="rule">The rule.</param>
    /// <param name="threading">The shaft of each end, from 1.</param>
    /// <param name="tieUp">The shafts each treadle lifts.</param>
    /// <param name="treadling">The treadle of each pick, from 1; 0 presses none.</param>
    internal static Weave FromTreadles(
        string name, Rule rule, IReadOnlyList<int> threading, IReadOnlyList<ShaftSet> tieUp, IReadOnlyList<int> treadling) =>
        FromDraft(name, rule, new Draft
        {
            Name = name,
            Shafts = ShaftsIn(threading, tieUp),
            Threading = [.. threading.Select(s => ShaftSet.Of(s))],
            TieUp = [.. tieUp],
            Treadling = [.. treadling.Select(t => t == 0 ? ShaftSet.None : ShaftSet.Of(t))],
        });

    /// <summary>One repeat from the cloth itself: a shaft for each different column, a treadle for each different row.</summary>
    /// <param name="name">Trade name with its figures.</param>
    /// <param name="rule">The rule.</param>
    /// <param name="cloth">One repeat of the cloth.</param>
    /// <exception cref="InputProblemException">It would take more than 64 shafts.</exception>
    internal static Weave FromCloth(string name, Rule rule, Drawdown cloth)
    {
        var shaftOf = new Dictionary<string, int>(StringComparer.Ordinal);
        var threading = new int[cloth.Ends];
        for (int end = 0; end < cloth.Ends; end++)
        {
            string column = string.Concat(Enumerable.Range(0, cloth.Picks).Select(p => cloth[p, end] ? '1' : '0'));
            shaftOf.TryAdd(column, shaftOf.Count + 1);
            threading[end] = shaftOf[column];
        }

        if (shaftOf.Count > ShaftSet.Highest)
        {
            throw new InputProblemException(new InputProblem(
                $"{name} takes {shaftOf.Count} shafts.", "weave", $"Use fewer blocks or a smaller unit, {ShaftSet.Highest} shafts at most."));
        }

        return FromLifts(name, rule, threading, [.. Enumerable.Range(0, cloth.Picks).Select(p => LiftOf(cloth, p, threading))]);
    }

    /// <summary>The same weave with some picks thrown as pattern between the ground picks, in a second yarn.</summary>
    /// <param name="isPattern">Whether a 0-based pick of the repeat is pattern.</param>
    internal Weave WithPatternPicks(Func<int, bool> isPattern) => this with
    {
        PickRoles = [.. Enumerable.Range(0, RepeatPicks).Select(p => isPattern(p) ? ThreadRole.Pattern : ThreadRole.Ground)],
        Draft = Draft with { WeftOrder = ThreadOrder.Of([.. Enumerable.Range(0, RepeatPicks).Select(p => isPattern(p) ? 1 : 0)]) },
        YarnNames = ["ground", "pattern"],
    };

    /// <summary>The same weave with notes added.</summary>
    /// <param name="notes">What to look out for.</param>
    internal Weave Noting(params ReadOnlySpan<string> notes) => this with { Notes = [.. Notes, .. notes] };

    private static ShaftSet LiftOf(Drawdown cloth, int pick, int[] threading)
    {
        ShaftSet lift = default;
        for (int end = 0; end < cloth.Ends; end++)
        {
            if (cloth[pick, end]) lift |= ShaftSet.Of(threading[end]);
        }

        return lift;
    }

    private static Weave FromDraft(string name, Rule rule, Draft draft)
    {
        if (new WeaveSize(draft.Ends, draft.Picks).Problem is { } problem) throw new InputProblemException(problem with { What = $"One repeat of {name}: {problem.What}" });
        return new Weave
        {
            Name = name,
            Draft = draft,
            Rule = rule,
            RepeatEnds = draft.Ends,
            RepeatPicks = draft.Picks,
            EndRoles = [.. Enumerable.Repeat(ThreadRole.Ground, draft.Ends)],
            PickRoles = [.. Enumerable.Repeat(ThreadRole.Ground, draft.Picks)],
        };
    }

    private static int ShaftsIn(IReadOnlyList<int> threading, IReadOnlyList<ShaftSet> lifts) =>
        Math.Max(threading.Max(), lifts.Count == 0 ? 1 : lifts.Max(l => l.Max));
}
