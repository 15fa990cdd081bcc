using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Supplementary weft: a pattern weft between the picks of a plain ground, tied by one end in each repeat.</summary>
public static class SupplementaryWeft
{
    /// <summary>Taken out, it leaves a sound plain cloth.</summary>
    public static Rule Rule { get; } = new(
        "supplementary weft", "plain ground on all ends; after each ground pick a pattern pick under the last end of each group only; float = ends in the group − 1", Source.Derivation);

    /// <summary>One repeat.</summary>
    /// <param name="group">Ends in a group, an even number from 2 to 40.</param>
    /// <exception cref="InputProblemException">The group is odd or out of range.</exception>
    public static Weave Of(int group = 6)
    {
        Check(group, "ends");
        int[] threading = [.. Enumerable.Range(1, group).Select(i => i == group ? 3 : (i - 1) % 2 + 1)];
        return Weave.FromLifts("supplementary weft", Rule, threading, [ShaftSet.Of(1), ShaftSet.Of(3), ShaftSet.Of(2, 3), ShaftSet.Of(3)])
            .WithPatternPicks(p => p % 2 == 1)
            .Noting($"Pattern floats pass over {group - 1} ends.", "Two wefts: ground and pattern by turns.");
    }

    internal static void Check(int group, string what)
    {
        if (group is < 2 or > 40 || group % 2 != 0)
        {
            throw new InputProblemException(new InputProblem($"A group of {group} {what} cannot be tied.", "group", "Give an even number from 2 to 40, for example 6."));
        }
    }
}
