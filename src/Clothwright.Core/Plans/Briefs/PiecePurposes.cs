using Clothwright.Core.Weaves.Analysis.Floats;

namespace Clothwright.Core.Plans.Briefs;

/// <summary>What a piece is for, as far as floats matter.</summary>
public static class PiecePurposes
{
    /// <summary>The purpose; whatever a child gets hold of goes by the strictest.</summary>
    /// <param name="piece">The piece.</param>
    public static FloatPurpose FloatPurpose(this Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        if (piece.Wearer is Wearer.Child or Wearer.Baby) return Weaves.Analysis.Floats.FloatPurpose.ChildThrow;
        return piece.Kind switch
        {
            PieceKind.Scarf or PieceKind.Shawl or PieceKind.Cowl => Weaves.Analysis.Floats.FloatPurpose.Scarf,
            PieceKind.Throw or PieceKind.Blanket => Weaves.Analysis.Floats.FloatPurpose.Blanket,
            PieceKind.Towel => Weaves.Analysis.Floats.FloatPurpose.Towel,
            PieceKind.Bag => Weaves.Analysis.Floats.FloatPurpose.Bag,
            _ => Weaves.Analysis.Floats.FloatPurpose.Garment,
        };
    }
}
