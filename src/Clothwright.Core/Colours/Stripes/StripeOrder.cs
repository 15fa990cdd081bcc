using System.Collections.Immutable;

namespace Clothwright.Core.Colours.Stripes;

/// <summary>An order of yarns for a warp or a weft.</summary>
/// <param name="Manner">How it comes about.</param>
/// <param name="Yarns">How many yarns take turns; 2 or more.</param>
/// <param name="Threads">Ends or picks to fill; 1 or more.</param>
public sealed record StripeOrder(StripeManner Manner, int Yarns, int Threads)
{
    /// <summary>How many stripes, for <see cref="StripeManner.Summing"/>, 1 to 80, and <see cref="StripeManner.Even"/>, 1 or more.</summary>
    public int Stripes { get; init; } = 6;

    /// <summary>Whether the stripes go back again from the widest, for <see cref="StripeManner.Summing"/>.</summary>
    public bool Mirrored { get; init; }

    /// <summary>Narrowest stripe, for <see cref="StripeManner.Lot"/>; 1 or more.</summary>
    public int Least { get; init; } = 2;

    /// <summary>Widest stripe, for <see cref="StripeManner.Lot"/>; not below the narrowest.</summary>
    public int Widest { get; init; } = 16;

    /// <summary>The lot, for <see cref="StripeManner.Lot"/>.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Number of the yarn of each thread, 0-based.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its bounds.</exception>
    public ImmutableArray<int> Laid() => Manner switch
    {
        StripeManner.Passage => ThreadGradient.Through(Yarns, Threads),
        StripeManner.Summing => InTurn(StripeWidths.Shared(StripeWidths.Summing(Stripes, Mirrored), Threads)),
        StripeManner.Even => InTurn(StripeWidths.Shared([.. Enumerable.Repeat(1.0, Stripes)], Threads)),
        StripeManner.Lot => InTurn(StripeWidths.ByLot(Threads, Least, Widest, Seed)),
        _ => throw new InvalidOperationException($"There is no manner {Manner}."),
    };

    private ImmutableArray<int> InTurn(ImmutableArray<int> widths) => [.. widths.SelectMany((width, i) => Enumerable.Repeat(i % Yarns, width))];
}
