using System.Collections.Immutable;
using Clothwright.Core.Looms;

namespace Clothwright.Core.Weaves.Fitting;

/// <content>Laying ends on shafts.</content>
public static partial class LoomFit
{
    // Null if the ends differ in more ways than a loom here can have shafts.
    private static ShaftLayout? LayShafts(ClothKinds lines, LoomLimits limits, ITieUpSearch search, List<string> reasons)
    {
        bool sinking = limits.Shed is ShedAction.Sinking or ShedAction.Counterbalance;
        bool everyEndMoves = limits.Shed is ShedAction.Counterbalance or ShedAction.Countermarche || limits.RigidHeddles > 0;
        if (limits.ShaftsPerEnd > 1)
        {
            if (everyEndMoves)
            {
                reasons.Add("Ends are kept on one shaft each: here a shaft that does not go up goes down, and an end on both would stop the shed.");
            }
            else if (SharedShafts(lines, limits, sinking, search) is { } shared)
            {
                return shared;
            }
        }

        bool Moves(int pick, int end) => lines.Up(pick, end) != sinking;
        bool[] still = [.. Enumerable.Range(0, lines.EndKinds).Select(end => !everyEndMoves && !Enumerable.Range(0, lines.PickKinds).Any(p => Moves(p, end)))];
        if (still.Count(s => !s) > ShaftSet.Highest) return null;

        int[] share = [.. Enumerable.Repeat(1, lines.EndKinds)];
        if (limits.Shed == ShedAction.Counterbalance)
        {
            share = CounterbalancedShafts.Share(lines.EndKinds, CounterbalancedShafts.Rising(lines), Math.Min(limits.Shafts, 16)) ?? share;
        }

        return Assign(lines, share, still, Moves, sinking);
    }

    private static ShaftLayout Assign(ClothKinds lines, int[] share, bool[] still, Func<int, int, bool> moves, bool sinking)
    {
        // A kind spread over several shafts takes them in turn along the warp.
        var columnOf = new Dictionary<(int Kind, int Turn), int>();
        int[] met = new int[lines.EndKinds];
        int[] column = new int[lines.EndKind.Length];
        for (int end = 0; end < column.Length; end++)
        {
            int kind = lines.EndKind[end];
            if (still[kind])
            {
                column[end] = -1;
                continue;
            }

            (int, int) key = (kind, met[kind]++ % share[kind]);
            if (!columnOf.TryGetValue(key, out column[end])) columnOf[key] = column[end] = columnOf.Count;
        }

        int[] number = columnOf.Count == 0
            ? []
            : [.. ThreadingOrder.Numbers([.. column.Where(c => c >= 0)], columnOf.Count).Select(n => n + 1)];
        var moved = ImmutableArray.CreateBuilder<ShaftSet>(lines.PickKinds);
        for (int pick = 0; pick < lines.PickKinds; pick++)
        {
            moved.Add(ShaftSet.Of([.. columnOf.Where(c => moves(pick, c.Key.Kind)).Select(c => number[c.Value])]));
        }

        var notes = ImmutableArray.CreateBuilder<string>();
        int[] loose = [.. Enumerable.Range(0, column.Length).Where(e => column[e] < 0)];
        if (loose.Length > 0)
        {
            notes.Add($"{Ends(loose)} never {(sinking ? "sinks" : "rises")} and needs no shaft; nothing holds it in the cloth.");
        }

        return new ShaftLayout(
            columnOf.Count, [.. column.Select(c => c < 0 ? ShaftSet.None : ShaftSet.Of(number[c]))], moved.MoveToImmutable(), sinking, true, notes.ToImmutable());
    }

    // Roles exchanged: ends are the lifts, shafts the treadles, and the picks are what is moved.
    private static ShaftLayout? SharedShafts(ClothKinds lines, LoomLimits limits, bool sinking, ITieUpSearch search)
    {
        if (lines.PickKinds > ShaftSet.Highest) return null;
        ShaftSet[] column = [.. Enumerable.Range(0, lines.EndKinds).Select(end =>
            ShaftSet.Of([.. Enumerable.Range(0, lines.PickKinds).Where(p => lines.Up(p, end) != sinking).Select(p => p + 1)]))];
        ShaftSet[] wanted = [.. column.Where(c => c.Bits != 0)];
        TieUpProblem problem = TieUpProblem.Union(wanted, limits.ShaftsPerEnd);
        TieUpAnswer answer = search.Solve(problem);
        if (answer.Chosen.Length >= wanted.Length || answer.Chosen.Length > ShaftSet.Highest) return null;

        ImmutableArray<ShaftSet> presses = answer.Presses(problem);
        var byColumn = wanted.Select((c, i) => (c, i)).ToDictionary(p => p.c, p => presses[p.i]);
        int several = lines.EndKind.Count(k => byColumn.GetValueOrDefault(column[k]).Count > 1);
        return new ShaftLayout(
            answer.Chosen.Length,
            [.. lines.EndKind.Select(k => byColumn.GetValueOrDefault(column[k]))],
            [.. Enumerable.Range(1, lines.PickKinds).Select(pick => ShaftSet.Of(
                [.. Enumerable.Range(1, answer.Chosen.Length).Where(s => problem.Candidates[answer.Chosen[s - 1]].Up.Contains(pick))]))],
            sinking,
            answer.Proved,
            [$"{several} ends hang on several shafts at once; they need long-eyed heddles, so that one shaft can move them while the other rests (common practice, no source)."]);
    }
}
