using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Double weave whose layers change places from block to block: pockets knitted into one piece, each block in the colour that lies on top.</summary>
public static class ExchangedLayers
{
    /// <summary>Odd threads make one cloth, even threads the other; the block says which lies on top.</summary>
    public static Rule Rule { get; } = new(
        "layers exchanging", "odd ends and picks weave one plain cloth, even ones the other; in a block that shows the odd cloth is on top, elsewhere the even", Source.Derivation);

    /// <summary>The two cells, four ends by four picks.</summary>
    public static UnitWeave Unit { get; } = new(
        "double weave, layers exchanging", Rule, Drawdown.Parse("1000/1110/0010/1011").Value, Drawdown.Parse("1101/0100/0111/0001").Value);

    /// <summary>One repeat of a profile, four shafts a block.</summary>
    /// <param name="profile">Blocks across and blocks that show the odd cloth on each line.</param>
    /// <exception cref="Quantities.InputProblemException">It would take more than 64 shafts.</exception>
    public static Weave Of(Profile profile)
    {
        Weave weave = Unit.Woven(profile);
        bool[] shown = [.. profile.Picks.SelectMany(p => profile.Ends.Select(p.Contains))];
        bool joined = shown.Contains(true) && shown.Contains(false);
        return weave with
        {
            Draft = weave.Draft with { WarpOrder = ThreadOrder.Of(0, 1), WeftOrder = ThreadOrder.Of(0, 1) },
            YarnNames = ["odd cloth", "even cloth"],
            Layers = joined ? 1 : 2,
            Notes = joined
                ? ["Two shuttles; the exchange joins both layers into one piece with pockets.", "Set the warp twice as close as one layer wants."]
                : ["One cloth lies on top throughout, so the two are not joined: let a block change."],
        };
    }
}
