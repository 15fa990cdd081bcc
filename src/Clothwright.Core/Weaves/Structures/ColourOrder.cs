using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>The order in which colours follow each other in warp and weft, each repeated across the cloth.</summary>
/// <param name="Names">What the colours are called, for example dark and light.</param>
/// <param name="Warp">Index into <paramref name="Names"/> for each end of one repeat of the order, from end 1.</param>
/// <param name="Weft">Index into <paramref name="Names"/> for each pick of one repeat of the order, from the first pick.</param>
public sealed record ColourOrder(ImmutableArray<string> Names, ImmutableArray<int> Warp, ImmutableArray<int> Weft)
{
    /// <summary>Names of the two colours of most colour-and-weave effects.</summary>
    public static ImmutableArray<string> DarkAndLight { get; } = ["dark", "light"];

    /// <summary>Dark and light by turns in warp and weft.</summary>
    public static ColourOrder Alternating { get; } = new(DarkAndLight, [0, 1], [0, 1]);

    /// <summary>The colour of an end, as an index into <see cref="Names"/>.</summary>
    /// <param name="end">0-based end.</param>
    public int OfEnd(int end) => Warp[end % Warp.Length];

    /// <summary>The colour of a pick, as an index into <see cref="Names"/>.</summary>
    /// <param name="pick">0-based pick.</param>
    public int OfPick(int pick) => Weft[pick % Weft.Length];
}
