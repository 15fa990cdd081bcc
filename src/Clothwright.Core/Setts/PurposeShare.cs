using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts;

/// <summary>The share of the limit at which a cloth serves its purpose.</summary>
/// <remarks>
/// For balanced purposes a share of Ashenhurst's maximum (ends plus intersections). For a face of one system: that system as a
/// share of its threads touching, the hidden system as a share of the plain weave maximum.
/// </remarks>
/// <param name="Low">The most open.</param>
/// <param name="High">The closest.</param>
/// <param name="Source">Where the range comes from.</param>
public sealed record PurposeShare(double Low, double High, Source Source)
{
    /// <summary>Share of a twill beside that of plain weave for one purpose: median of published charts, 0.70 to 0.77.</summary>
    public const double OfTwill = 0.70 / 0.77;

    private static readonly Source Charts = Source.Published("public sett charts of a loom maker and a yarn seller; shares computed from their rows");

    /// <summary>The visible system of a warp-faced or weft-faced cloth, as a share of its threads touching.</summary>
    public static PurposeShare Covering { get; } = new(0.9, 1.2, Source.CommonPractice);

    /// <summary>The hidden system of a warp-faced or weft-faced cloth, as a share of the plain weave maximum.</summary>
    public static PurposeShare Hidden { get; } = new(0.3, 0.6, Source.CommonPractice);

    /// <summary>The share for a balanced purpose, in plain weave.</summary>
    /// <param name="purpose">Airy, drape, everyday or firm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The purpose is a face of one system.</exception>
    public static PurposeShare Balanced(ClothPurpose purpose) => purpose switch
    {
        ClothPurpose.Airy => new(0.50, 0.55, Charts),
        ClothPurpose.Drape => new(0.55, 0.67, Charts),
        ClothPurpose.Everyday => new(0.67, 0.87, Charts),
        ClothPurpose.Firm => new(0.85, 0.95, Source.CommonPractice),
        _ => throw new ArgumentOutOfRangeException(nameof(purpose), purpose, "This purpose has a share for each system of its own."),
    };

    /// <summary>The share in a weave with floats: charts set twills a tenth more open than plain weave against their own limits.</summary>
    /// <param name="meanFloat">Mean float; 1 is plain, 2 and above count as twill.</param>
    public PurposeShare InWeave(double meanFloat)
    {
        double factor = 1 - (1 - OfTwill) * Math.Clamp(meanFloat - 1, 0, 1);
        return this with { Low = Low * factor, High = High * factor };
    }

    /// <summary>Middle of the range with its spread.</summary>
    /// <param name="label">What it is the share of.</param>
    public Derived<Ratio> Middle(string label) => Derived.FromRange(label, Ratio.FromValue(Low), Ratio.FromValue(High), Source);
}
