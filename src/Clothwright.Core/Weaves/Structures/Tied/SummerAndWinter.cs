using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Summer and winter: the tied unit weave with two tie-downs; light figures on dark on one face, dark on light on the other.</summary>
public static class SummerAndWinter
{
    /// <summary>Two tie-downs, ratio 1 to 1.</summary>
    public static Rule Rule { get; } = new(
        "summer and winter",
        "unit 1 b 2 b; pattern pick = one tie-down + pattern shafts of the blocks that do not show weft; tabby 12 / all pattern shafts; longest float 3 whatever the profile",
        Source.Derivation);

    /// <summary>The weave as two cells, tie-downs by turns: over the picks 1 + P, tabby, 2 + P, tabby.</summary>
    public static UnitWeave Unit { get; } = new(
        "summer and winter", Rule, Drawdown.Parse("1000/1010/0010/0101").Value, Drawdown.Parse("1101/1010/0111/0101").Value);

    /// <summary>One repeat of a profile.</summary>
    /// <param name="profile">Blocks across and blocks that show the pattern weft on each line.</param>
    /// <param name="order">Tie-downs on successive pattern picks of a line; <see cref="TieOrder.Alternate"/> if left out.</param>
    public static Weave Of(Profile profile, IReadOnlyList<int>? order = null) =>
        TiedWeave.Of("summer and winter", Rule, profile, 2, order ?? TieOrder.Alternate);
}
