using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;

namespace Clothwright.Core.Worksheets.Beginnings;

/// <summary>The size and finish with which a piece begins, until the weaver decides otherwise.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Width">Width when washed.</param>
/// <param name="Length">Length when washed.</param>
/// <param name="Purpose">How close its cloth is to be.</param>
public sealed record PieceModel(PieceKind Kind, Length Width, Length Length, ClothPurpose Purpose)
{
    /// <summary>Its fringe.</summary>
    public FringeStyle Fringe { get; init; } = FringeStyle.None;

    /// <summary>Length of the fringe; zero for none.</summary>
    public Length FringeLength { get; init; }

    /// <summary>Cloth turned in at each end.</summary>
    public Length Hem { get; init; }

    /// <summary>Cloth taken into the seam at each end.</summary>
    public Length EndSeam { get; init; }

    /// <summary>How its ends are joined.</summary>
    public RingJoin Join { get; init; } = RingJoin.None;

    /// <summary>Whom it is for.</summary>
    public Wearer Wearer { get; init; } = Wearer.Adult;

    /// <summary>The model for a kind of piece.</summary>
    /// <param name="kind">The kind.</param>
    /// <remarks>Sizes are common practice, no source: what a grown person wears, what a table, bed or hand takes.</remarks>
    public static PieceModel Of(PieceKind kind) => kind switch
    {
        PieceKind.Scarf => Fringed(kind, 20, 180, ClothPurpose.Drape, 12),
        PieceKind.Shawl => Fringed(kind, 55, 190, ClothPurpose.Drape, 12),
        PieceKind.Cowl => new PieceModel(kind, Centimetres(28), Centimetres(75), ClothPurpose.Drape) { Join = RingJoin.Plain, EndSeam = Centimetres(1.5) },
        PieceKind.Throw => Fringed(kind, 110, 160, ClothPurpose.Everyday, 12) with { Wearer = Wearer.Household },
        PieceKind.Towel => new PieceModel(kind, Centimetres(45), Centimetres(65), ClothPurpose.Everyday) { Hem = Centimetres(2.5), Wearer = Wearer.Household },
        PieceKind.Blanket => Fringed(kind, 115, 180, ClothPurpose.Everyday, 10) with { Wearer = Wearer.Household },
        PieceKind.Bag => new PieceModel(kind, Centimetres(36), Centimetres(90), ClothPurpose.Firm) { EndSeam = Centimetres(2), Hem = Centimetres(3), Wearer = Wearer.Household },
        PieceKind.GarmentPanel => new PieceModel(kind, Centimetres(60), Centimetres(140), ClothPurpose.Drape) { EndSeam = Centimetres(1.5) },
        PieceKind.Sample => new PieceModel(kind, Centimetres(15), Centimetres(20), ClothPurpose.Everyday) { Wearer = Wearer.Household },
        _ => new PieceModel(kind, Centimetres(60), Centimetres(200), ClothPurpose.Everyday) { Wearer = Wearer.Household },
    };

    private static PieceModel Fringed(PieceKind kind, double width, double length, ClothPurpose purpose, double fringe) =>
        new(kind, Centimetres(width), Centimetres(length), purpose) { Fringe = FringeStyle.Twisted, FringeLength = Centimetres(fringe) };

    private static Length Centimetres(double value) => Quantities.Length.FromCentimetres(value);
}
