using System.Collections.Immutable;
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

    private static Weave FromDraft(string name, Rule rule, Draft draft) => new()
    {
        Name = name,
        Draft = draft,
        Rule = rule,
        RepeatEnds = draft.Ends,
        RepeatPicks = draft.Picks,
        EndRoles = [.. Enumerable.Repeat(ThreadRole.Ground, draft.Ends)],
        PickRoles = [.. Enumerable.Repeat(ThreadRole.Ground, draft.Picks)],
    };

    private static int ShaftsIn(IReadOnlyList<int> threading, IReadOnlyList<ShaftSet> lifts) =>
        Math.Max(threading.Max(), lifts.Count == 0 ? 1 : lifts.Max(l => l.Max));
}
