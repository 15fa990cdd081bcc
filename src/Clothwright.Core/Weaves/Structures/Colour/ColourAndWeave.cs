using System.Collections.Immutable;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Patterns that colour order and weave make together: what shows is the warp's colour where warp is on top, else the weft's.</summary>
public static class ColourAndWeave
{
    /// <summary>Colour of the thread on top.</summary>
    public static Rule Rule { get; } = new(
        "colour and weave", "face = colour of the end where warp is on top, else of the pick; back, seen through the cloth, the other", Source.Derivation);

    /// <summary>Names of the two yarns of most colour-and-weave effects.</summary>
    public static ImmutableArray<string> DarkAndLight { get; } = ["dark", "light"];

    /// <summary>A weave in a chosen order of colours, one repeat of both together.</summary>
    /// <param name="name">Trade name of the effect.</param>
    /// <param name="weave">The weave, one repeat.</param>
    /// <param name="warp">Order of the ends.</param>
    /// <param name="weft">Order of the picks.</param>
    /// <exception cref="Quantities.InputProblemException">The common repeat is too large.</exception>
    public static Weave Of(string name, Weave weave, ThreadOrder warp, ThreadOrder weft)
    {
        Weave whole = weave.Sized(new WeaveSize(Together(weave.RepeatEnds, warp), Together(weave.RepeatPicks, weft)));
        return whole with
        {
            Name = name,
            Rule = new Rule($"{Rule.Name}: {name}", $"{weave.Name}, warp {warp}, weft {weft}; {Rule.Formula}", Rule.Source),
            RepeatEnds = whole.Draft.Ends,
            RepeatPicks = whole.Draft.Picks,
            BalancingEnds = 0,
            BalancingPicks = 0,
            Draft = whole.Draft with { Name = name, WarpOrder = warp, WeftOrder = weft },
            YarnNames = Math.Max(warp.Yarns, weft.Yarns) <= 2
                ? DarkAndLight
                : [.. Enumerable.Range(0, Math.Max(warp.Yarns, weft.Yarns)).Select(y => $"colour {ThreadOrder.YarnName(y)}")],
        };
    }

    /// <summary>The yarn that shows on the face.</summary>
    /// <param name="draft">Draft with its orders of yarns.</param>
    /// <param name="cloth">Its drawdown.</param>
    /// <param name="pick">0-based pick.</param>
    /// <param name="end">0-based end.</param>
    public static int OnFace(Draft draft, Drawdown cloth, int pick, int end) => cloth[pick, end] ? draft.WarpOrder[end] : draft.WeftOrder[pick];

    /// <summary>The yarn that shows on the back, seen through the cloth (end 1 still at the left).</summary>
    /// <inheritdoc cref="OnFace" />
    public static int OnBack(Draft draft, Drawdown cloth, int pick, int end) => cloth[pick, end] ? draft.WeftOrder[pick] : draft.WarpOrder[end];

    private static int Together(int repeat, ThreadOrder order) =>
        (int)Math.Min((long)repeat / Divisors.Greatest(repeat, order.Repeat.Length) * order.Repeat.Length, int.MaxValue);
}
