using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Tied unit weaves with one pattern end after each tie-down end, and any number of independent blocks.</summary>
public static class TiedWeave
{
    /// <summary>Tie-down and pattern ends by turns; a block shows weft where its pattern shaft stays down.</summary>
    public static Rule Rule { get; } = new(
        "tied unit weave",
        "unit 1 b 2 b … t b (1 … t tie-downs, b the block's shaft); pattern pick = one tie-down + pattern shafts of the blocks that do not show weft; tabby: all tie-downs / all pattern shafts",
        Source.Derivation);

    /// <summary>One repeat of a profile.</summary>
    /// <param name="profile">Blocks across and blocks that show the pattern weft on each line.</param>
    /// <param name="ties">Tie-down shafts, 2 to 4.</param>
    /// <param name="order">Tie-downs on successive pattern picks of a line; 1 … t if left out.</param>
    /// <exception cref="InputProblemException">There are too many shafts, or the order names a shaft that is no tie-down.</exception>
    public static Weave Of(Profile profile, int ties, IReadOnlyList<int>? order = null) => Of($"tied weave, {ties} tie-downs", Rule, profile, ties, order);

    internal static Weave Of(string name, Rule rule, Profile profile, int ties, IReadOnlyList<int>? order)
    {
        if (ties is < 2 or > 4) throw new InputProblemException(new InputProblem($"{ties} tie-downs are not provided for.", "ties", "Give 2, 3 or 4."));
        IReadOnlyList<int> tie = order ?? DrawOrder.Straight(ties);
        TieOrder.Check(tie, ties);
        int blocks = profile.Blocks;
        if (ties + blocks > ShaftSet.Highest)
        {
            throw new InputProblemException(new InputProblem($"{blocks} blocks and {ties} tie-downs take {blocks + ties} shafts.", "blocks", $"Keep to {ShaftSet.Highest} shafts."));
        }

        ShaftSet tieShafts = ShaftSet.FirstOf(ties);
        var patternShafts = new ShaftSet(ShaftSet.FirstOf(ties + blocks).Bits & ~tieShafts.Bits);
        int[] threading = [.. profile.Ends.SelectMany(b => Enumerable.Range(1, ties).SelectMany(t => new[] { t, ties + b }))];
        ShaftSet[] pattern =
        [
            .. profile.Picks.SelectMany(shown => tie.Select(t => ShaftSet.Of(t) | new ShaftSet(patternShafts.Bits & ~(shown.Bits << ties)))),
        ];
        if (pattern.Length % 2 != 0) pattern = [.. pattern, .. pattern];
        ShaftSet[] lifts = [.. pattern.SelectMany((lift, i) => new[] { lift, i % 2 == 0 ? tieShafts : patternShafts })];
        return Weave.FromLifts(name, rule, threading, lifts).WithPatternPicks(p => p % 2 == 0).Noting(
            $"No pattern float passes over more than {2 * ties - 1} ends.",
            $"{ties + blocks} shafts: {ties} tie-downs and one for each of {blocks} blocks.",
            "Two wefts: ground in tabby (all tie-downs / all pattern shafts), pattern between.");
    }
}
