using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves;

/// <summary>Finds what keeps a draft from being woven: numbers beyond its shafts and treadles, lists that do not fit each other, size.</summary>
public static class DraftCheck
{
    /// <summary>The draft, or the first thing that is wrong with it.</summary>
    /// <param name="draft">A draft as it was given.</param>
    public static Parsed<Draft> Checked(Draft draft)
    {
        ImmutableArray<InputProblem> problems = Problems(draft);
        return problems.IsEmpty ? draft : problems[0];
    }

    /// <summary>Everything that is wrong with a draft, in the order threading, tie-up, treadling, lift plan; empty if it can be woven.</summary>
    /// <param name="draft">A draft as it was given.</param>
    public static ImmutableArray<InputProblem> Problems(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var problems = ImmutableArray.CreateBuilder<InputProblem>();
        if (draft.Shafts is < 1 or > DraftLimits.Shafts)
        {
            problems.Add(new InputProblem(
                $"{draft.Shafts} shafts are not a loom's.", "shafts", $"Give 1 to {DraftLimits.Shafts} shafts, for example 4."));
        }

        Size(draft, problems);
        if (draft.Threading.IsDefault || draft.TieUp.IsDefault || draft.Treadling.IsDefault || draft.LiftPlan.IsDefault) return problems.ToImmutable();
        Members(draft.Threading, draft.Shafts, "threading", "end", "shaft", problems);
        Members(draft.TieUp, draft.Shafts, "tie-up", "treadle", "shaft", problems);
        Members(draft.Treadling, draft.Treadles, "treadling", "pick", "treadle", problems);
        Members(draft.LiftPlan, draft.Shafts, "lift plan", "pick", "shaft", problems);
        if (!draft.LiftPlan.IsEmpty && !draft.Treadling.IsEmpty && draft.LiftPlan.Length != draft.Treadling.Length)
        {
            problems.Add(new InputProblem(
                $"The lift plan has {draft.LiftPlan.Length} picks, the treadling {draft.Treadling.Length}.",
                "lift plan",
                "Give both the same number of picks, or leave one of them out."));
        }

        return problems.ToImmutable();
    }

    private static void Size(Draft draft, ImmutableArray<InputProblem>.Builder problems)
    {
        bool noPlan = draft.LiftPlan.IsDefaultOrEmpty;
        int ends = draft.Threading.IsDefault ? 0 : draft.Ends;
        int picks = noPlan ? (draft.Treadling.IsDefault ? 0 : draft.Treadling.Length) : draft.LiftPlan.Length;
        if (ends == 0) problems.Add(new InputProblem("No end is threaded.", "threading", "Give at least one end, for example 1 2 3 4."));
        if (picks == 0) problems.Add(new InputProblem("There are no picks.", "treadling", "Give a treadling with a tie-up, or a lift plan."));
        if (ends > DraftLimits.Ends) problems.Add(TooMany(ends, "ends", DraftLimits.Ends, "threading"));
        if (picks > DraftLimits.Picks) problems.Add(TooMany(picks, "picks", DraftLimits.Picks, noPlan ? "treadling" : "lift plan"));
        if ((long)ends * picks > DraftLimits.Crossings)
        {
            problems.Add(new InputProblem(
                $"{ends} ends by {picks} picks are more crossings than can be worked with ({DraftLimits.Crossings}).",
                "draft",
                "Give one repeat and say how often it is woven."));
        }

        if (!draft.TieUp.IsDefault && draft.Treadles > DraftLimits.Treadles)
        {
            problems.Add(TooMany(draft.Treadles, "treadles", DraftLimits.Treadles, "tie-up"));
        }
    }

    private static InputProblem TooMany(int count, string what, int limit, string where) =>
        new($"{count} {what} are more than the {limit} a draft can hold.", where, $"Give at most {limit} {what}: one repeat is enough.");

    // One problem for a list, at its first breach, with the number of breaches: a wrong shaft count would otherwise flood the page.
    private static void Members(
        ImmutableArray<ShaftSet> list, int limit, string where, string line, string member, ImmutableArray<InputProblem>.Builder problems)
    {
        ShaftSet any = default;
        foreach (ShaftSet set in list) any |= set;
        if (any.Max <= limit) return;
        int breaches = list.Count(s => s.Max > limit);
        int first = list.ToList().FindIndex(s => s.Max > limit);
        string others = breaches == 1 ? "" : $" ({breaches - 1} more like it)";
        problems.Add(new InputProblem(
            $"{char.ToUpperInvariant(line[0])}{line[1..]} {first + 1} uses {member} {list[first].Max}, but there are {limit} {member}s{others}.",
            $"{where}, {line} {first + 1}",
            $"Use a {member} from 1 to {limit}, or give the draft {list.Max(s => s.Max)} {member}s."));
    }
}
