using System.Collections.Immutable;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Plans.Layers;

/// <summary>The part of a weave that sett and geometry go by: its ground picks.</summary>
internal static class LayerWeave
{
    /// <summary>The cloth without its pattern picks.</summary>
    /// <param name="weave">The weave.</param>
    public static Drawdown Ground(Weave weave)
    {
        Drawdown whole = weave.Draft.Drawdown();
        if (!weave.HasPatternPicks) return whole;
        int[] ground = [.. Enumerable.Range(0, whole.Picks).Where(p => weave.PickRoles[p] == ThreadRole.Ground)];
        return Drawdown.From(whole.Ends, ground.Length, (pick, end) => whole[ground[pick], end]);
    }

    /// <summary>The draft with a shuttle of its own for the pattern weft.</summary>
    /// <param name="weave">The weave.</param>
    public static Draft WithShuttles(Weave weave) => weave.HasPatternPicks
        ? weave.Draft with { WeftOrder = ThreadOrder.Of([.. weave.PickRoles.Select(r => r == ThreadRole.Pattern ? 1 : 0)]) }
        : weave.Draft with { WeftOrder = ThreadOrder.OneYarn };

    /// <summary>Pattern picks for each ground pick.</summary>
    /// <param name="weave">The weave.</param>
    public static double PatternPicksPerGroundPick(Weave weave)
    {
        int pattern = weave.PickRoles.Count(r => r == ThreadRole.Pattern);
        return (double)pattern / (weave.PickRoles.Length - pattern);
    }
}
