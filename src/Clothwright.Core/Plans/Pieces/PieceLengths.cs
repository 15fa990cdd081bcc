using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Lengths;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Pieces;

/// <summary>The chain of lengths and widths of one piece: finished, off the loom, under tension, as warp.</summary>
internal sealed record PieceLengths
{
    private static readonly Rule LengthRule = new("hems and seams", "cloth = finished length + 2 × hem + 2 × seam at the ends", Source.Derivation);

    private static readonly Rule WidthRule = new("side seams", "cloth = finished width + 2 × seam at the sides", Source.Derivation);

    private static readonly Rule LayerRule = new("double width", "width on the loom = width of the cloth opened out ÷ 2; the fold lies at one side", Source.Derivation);

    private static readonly Rule FringesRule = new("fringes", "warp in a fringe × 2", Source.Derivation);

    /// <summary>Cloth wanted after washing, hems and seams included.</summary>
    public required Derived<Length> Cloth { get; init; }

    public required Derived<Length> OffLoom { get; init; }

    public required Derived<Length> UnderTension { get; init; }

    /// <summary>Warp that the woven part uses.</summary>
    public required Derived<Length> WovenWarp { get; init; }

    /// <summary>Warp that one fringe uses; null without fringes.</summary>
    public required Derived<Length>? OneFringe { get; init; }

    /// <summary>Warp that both fringes use, or zero.</summary>
    public required Derived<Length> Fringes { get; init; }

    /// <summary>Width of one layer wanted after washing, seams included.</summary>
    public required Derived<Length> LayerWidth { get; init; }

    /// <summary>Width of one layer in the reed that the wanted width asks for.</summary>
    public required Derived<Length> WantedReedWidth { get; init; }

    /// <summary>Follows a piece back from its finished size.</summary>
    public static PieceLengths Of(Piece piece, PieceCloth cloth)
    {
        Derived<Length> length = Derived.From<Length>(
            "cloth wanted, length",
            LengthRule,
            Derived.Decision("finished length", piece.Length),
            Derived.Decision("hem", piece.Hem),
            Derived.Decision("seam at each end", piece.EndSeam),
            (l, hem, seam) => l + 2 * hem + 2 * seam);
        Derived<Length> offLoom = FinishingShrinkage.Before("length off the loom", length, cloth.ShrinkageInLength);
        Derived<Length>? fringe = piece.Fringe == FringeStyle.None
            ? null
            : FringeAllowance.WarpFor(piece.Fringe, Derived.Decision("finished fringe", piece.FringeLength));
        Derived<Length> layerWidth = WidthOfLayer(piece);
        return new PieceLengths
        {
            LayerWidth = layerWidth,
            Cloth = length,
            OffLoom = offLoom,
            UnderTension = TensionRecovery.UnderTension(offLoom, cloth.WarpTakeUp, cloth.WarpTakeUpUnderTension),
            WovenWarp = TakeUp.YarnFor("warp in the woven part", offLoom, cloth.WarpTakeUp),
            OneFringe = fringe,
            Fringes = fringe is null
                ? Derived.Decision("warp in the fringes", Length.Zero)
                : Derived.From<Length>("warp in the fringes", FringesRule, fringe, f => 2 * f),
            WantedReedWidth = DrawIn.ReedWidthFor(
                FinishingShrinkage.Before("width off the loom", layerWidth, cloth.ShrinkageInWidth), cloth.DrawIn),
        };
    }

    private static Derived<Length> WidthOfLayer(Piece piece)
    {
        Derived<Length> whole = Derived.From<Length>(
            "cloth wanted, width",
            WidthRule,
            Derived.Decision("finished width", piece.Width),
            Derived.Decision("seam at each side", piece.SideSeam),
            (w, seam) => w + 2 * seam);
        return piece.Make == PieceMake.DoubleWidth ? Derived.From<Length>("width of one layer", LayerRule, whole, w => w / 2) : whole;
    }
}
