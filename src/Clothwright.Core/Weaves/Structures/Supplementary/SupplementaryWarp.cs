using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Supplementary warp: pattern ends between the ends of a plain ground, floating on the face and tied down by one pick in each repeat.</summary>
public static class SupplementaryWarp
{
    /// <summary>The supplementary weft turned by a quarter.</summary>
    public static Rule Rule { get; } = new(
        "supplementary warp", "plain ground on shafts 1, 2; after each ground end a pattern end on shaft 3, down on the last pick of each group only; float = picks in the group − 1", Source.Derivation);

    /// <summary>One repeat.</summary>
    /// <param name="group">Picks in a group, an even number from 2 to 40.</param>
    /// <exception cref="InputProblemException">The group is odd or out of range.</exception>
    public static Weave Of(int group = 6)
    {
        SupplementaryWeft.Check(group, "picks");
        ShaftSet[] lifts = [.. Enumerable.Range(1, group).Select(p => ShaftSet.Of(p % 2 == 1 ? 2 : 1) | (p == group ? ShaftSet.None : ShaftSet.Of(3)))];
        Weave weave = Weave.FromLifts("supplementary warp", Rule, [1, 3, 2, 3], lifts);
        return weave with
        {
            Draft = weave.Draft with { WarpOrder = ThreadOrder.Of(0, 1) },
            EndRoles = [ThreadRole.Ground, ThreadRole.Pattern, ThreadRole.Ground, ThreadRole.Pattern],
            YarnNames = ["ground", "pattern"],
            Notes = [$"Pattern floats pass over {group - 1} picks.", "Pattern ends take up less than the ground: give them a second beam or weigh them separately."],
        };
    }
}
