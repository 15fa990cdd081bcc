using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Plans.Layers;

/// <summary>Lays the weave of one layer in two layers, upper ends and lower ends by turns.</summary>
/// <remarks>
/// Shaft k of the weave becomes 2k − 1 above and 2k below; a pick of the lower layer lifts every upper end out of its way.
/// The lower layer is woven as the complement, one pick on, so that the same face lies outside and plain weave runs on round the fold.
/// Order of picks: above, below for a tube; above, below, below, above for a fold at one side.
/// </remarks>
public static class LayeredDraft
{
    /// <summary>The draft as it is threaded and tied on the loom.</summary>
    /// <param name="weave">The weave of one layer.</param>
    /// <param name="make">How the piece lies on the loom.</param>
    /// <returns>The weave's own draft for a flat piece.</returns>
    public static Draft Of(Weave weave, PieceMake make)
    {
        ArgumentNullException.ThrowIfNull(weave);
        return make switch
        {
            PieceMake.Flat => weave.Draft,
            PieceMake.Tube => InTwo(weave.Draft, "tube", "TB"),
            PieceMake.DoubleWidth => InTwo(weave.Draft, "double width", "TBBT"),
            _ => throw new ArgumentOutOfRangeException(nameof(make), make, "This is no way for a piece to lie on the loom."),
        };
    }

    private static Draft InTwo(Draft layer, string name, string order)
    {
        int turns = order.Length / 2;
        int picks = layer.Picks % turns == 0 ? layer.Picks : layer.Picks * turns;
        var lifts = new List<ShaftSet>(picks * 2);
        int above = 0;
        int below = 0;
        while (lifts.Count < picks * 2)
        {
            foreach (char layerOfPick in order) lifts.Add(layerOfPick == 'T' ? Upper(Raised(layer, above++)) : UnderAll(layer, below++));
        }

        return AsTreadled(layer, $"{layer.Name}, {name}".TrimStart(',', ' '), lifts);
    }

    private static Draft AsTreadled(Draft layer, string name, List<ShaftSet> lifts)
    {
        ImmutableArray<ShaftSet> tieUp = [.. lifts.Distinct()];
        var threading = ImmutableArray.CreateBuilder<ShaftSet>(layer.Ends * 2);
        foreach (ShaftSet end in layer.Threading)
        {
            threading.Add(Upper(end));
            threading.Add(Lower(end));
        }

        var draft = new Draft { Name = name, Shafts = layer.Shafts * 2, Threading = threading.MoveToImmutable() };
        return tieUp.Length > ShaftSet.Highest
            ? draft with { LiftPlan = [.. lifts] }
            : draft with { TieUp = tieUp, Treadling = [.. lifts.Select(l => ShaftSet.Of(tieUp.IndexOf(l) + 1))] };
    }

    private static ShaftSet UnderAll(Draft layer, int pick)
    {
        ShaftSet all = ShaftSet.FirstOf(layer.Shafts);
        ShaftSet sunk = Raised(layer, pick + 1);
        return Upper(all) | Lower(new ShaftSet(all.Bits & ~sunk.Bits));
    }

    private static ShaftSet Raised(Draft layer, int pick)
    {
        ShaftSet lift = layer.Lift(pick % layer.Picks);
        return layer.RisingShed ? lift : new ShaftSet(ShaftSet.FirstOf(layer.Shafts).Bits & ~lift.Bits);
    }

    private static ShaftSet Upper(ShaftSet shafts) => Spread(shafts, 0);

    private static ShaftSet Lower(ShaftSet shafts) => Spread(shafts, 1);

    private static ShaftSet Spread(ShaftSet shafts, int offset)
    {
        ulong bits = 0;
        foreach (int shaft in shafts.Members()) bits |= 1UL << ((shaft - 1) * 2 + offset);
        return new ShaftSet(bits);
    }
}
