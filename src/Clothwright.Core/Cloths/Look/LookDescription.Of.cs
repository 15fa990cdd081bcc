using System.Collections.Immutable;
using Clothwright.Core.Setts;

namespace Clothwright.Core.Cloths.Look;

public sealed partial record LookDescription
{
    /// <summary>The look of a cloth of which yarns, weave and setts are known.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="washed">Whether its yarns have bloomed in the wash.</param>
    public static LookDescription Of(ClothGeometry cloth, bool washed = true)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ClothQuestion known = cloth.Question;
        return new LookDescription(known.Weave, Threads(known.Warp, washed), Threads(known.Weft, washed), known.Ends.Value, known.Picks.Value).Bent(cloth);
    }

    /// <summary>The same look with the threads bent as a geometry has them.</summary>
    /// <param name="cloth">The cloth.</param>
    public LookDescription Bent(ClothGeometry cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        double warp = cloth.WarpCrimp.Value.Value;
        double weft = cloth.WeftCrimp.Value.Value;
        double warpHeight = Sections.CrimpWave.OfCrimp(Math.Max(0, warp), 1 / cloth.Question.Picks.Value.PerMetre).Height;
        double weftHeight = Sections.CrimpWave.OfCrimp(Math.Max(0, weft), 1 / cloth.Question.Ends.Value.PerMetre).Height;
        return this with
        {
            WarpRise = warpHeight + weftHeight > 0 ? warpHeight / (warpHeight + weftHeight) : 0.5,
            WarpYarnPerLength = 1 + warp,
            WeftYarnPerLength = 1 + weft,
        };
    }

    private static ImmutableArray<ThreadLook> Threads(ThreadSystem threads, bool washed)
    {
        ThreadLook[] looks = [.. threads.Yarns.Select(y => ThreadLooks.Of(y, 1, washed))];
        return [.. threads.Order.Repeat.Select(y => looks[y])];
    }
}
