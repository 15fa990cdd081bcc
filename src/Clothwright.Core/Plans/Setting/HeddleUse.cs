using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Reeds;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Plans.Setting;

/// <summary>How rigid heddles serve a weave: some part the ends in groups, some only set them closer.</summary>
/// <param name="Needed">Equal heddles that the weave needs at once.</param>
/// <param name="Sharing">Heddles that may share the sett.</param>
/// <param name="Layers">Layers woven at once.</param>
/// <remarks>
/// k heddles part the ends in k + 1 groups. Plain weave needs one, and more of them only multiply the sett (threadings 1 3 2 3 and
/// 1 4 2 4 3 4). A weave on s groups needs s − 1 at the sett of one, since more ends than eyes cannot be drawn. Two layers of plain weave
/// need two at twice the sett, and a pick-up stick.
/// </remarks>
internal sealed record HeddleUse(int Needed, int Sharing, int Layers)
{
    /// <summary>The use of heddles in a weave.</summary>
    public static HeddleUse For(Loom loom, Weave weave, int layers)
    {
        int groups = weave.Draft.Shafts;
        if (layers > 1) return new HeddleUse(layers, layers, layers);
        return groups <= 2 ? new HeddleUse(1, Math.Max(1, loom.RigidHeddles), 1) : new HeddleUse(groups - 1, 1, 1);
    }

    /// <summary>Whether a way to sley is one that the weave can be threaded in.</summary>
    public bool Allows(ReedFit fit) => Layers == 1 || (fit.Heddles == Layers && fit.Sley.IsEven);

    /// <summary>The heddles of which there are enough alike.</summary>
    /// <exception cref="InputProblemException">There are some, but of none enough.</exception>
    public ImmutableArray<RigidHeddle> Enough(ImmutableArray<RigidHeddle> heddles, Loom loom, Weave weave)
    {
        ImmutableArray<RigidHeddle> enough = [.. heddles.Where(h => h.Count >= Needed)];
        return heddles.IsEmpty || !enough.IsEmpty
            ? enough
            : throw new InputProblemException(new InputProblem(
                $"{weave.Name}{(Layers > 1 ? $" in {Layers} layers" : "")} on {loom.Name} needs {Needed} equal rigid heddles, and of none are there so many.",
                "bench.heddles",
                $"Give the number owned under \"count\", or choose a weave on {(Layers > 1 ? "one layer" : "fewer groups of ends, for example plain")}."));
    }
}
