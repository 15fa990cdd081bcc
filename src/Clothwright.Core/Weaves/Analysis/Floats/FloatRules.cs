using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>The longest floats that do well, by purpose. All of them common practice, no source.</summary>
public static class FloatRules
{
    /// <summary>One rule for each purpose, strictest first.</summary>
    public static ImmutableArray<FloatRule> All { get; } =
    [
        Rule(FloatPurpose.ChildThrow, 5, "small fingers and toes catch in it", "A small child can wind a loose thread round a finger: follow the rules for children's textiles where you live."),
        Rule(FloatPurpose.Cushion, 6, "buttons, zips and claws catch in it"),
        Rule(FloatPurpose.Bag, 8, "keys and buckles catch in it and it wears through"),
        Rule(FloatPurpose.Towel, 10, "rings and pegs catch in it and it pulls in the wash"),
        Rule(FloatPurpose.Garment, 10, "seams slip beside it and jewellery catches in it"),
        Rule(FloatPurpose.Scarf, 12, "rings and brooches catch in it"),
        Rule(FloatPurpose.Blanket, 15, "feet and pets catch in it"),
    ];

    /// <summary>The rule for a purpose.</summary>
    /// <param name="purpose">What the cloth is for.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such purpose.</exception>
    public static FloatRule For(FloatPurpose purpose) => All.FirstOrDefault(r => r.Purpose == purpose)
        ?? throw new ArgumentOutOfRangeException(nameof(purpose), purpose, "There is no rule for this purpose.");

    private static FloatRule Rule(FloatPurpose purpose, double longestMillimetres, string reason, string caution = "") =>
        new(purpose, Length.FromMillimetres(longestMillimetres), reason, caution, Source.CommonPractice);
}
