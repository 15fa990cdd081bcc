using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>Pieces in the trade's words.</summary>
internal static class PieceWords
{
    /// <summary>The kind in the singular.</summary>
    public static string One(PieceKind kind) => kind switch
    {
        PieceKind.GarmentPanel => "garment panel",
        PieceKind.Yardage => "length of cloth",
        _ => kind.ToString().ToLowerInvariant(),
    };

    /// <summary>A number of pieces of a kind, the number in words.</summary>
    public static string Several(int count, PieceKind kind) => count == 1
        ? $"one {One(kind)}"
        : $"{Words.Spelled(count)} {(kind == PieceKind.Scarf ? "scarves" : kind == PieceKind.Yardage ? "lengths of cloth" : One(kind) + "s")}";

    /// <summary>Wanted size, for example <c>21 × 180 cm</c>.</summary>
    public static string Size(Piece piece, UnitStyle style) => Size(piece.Width, piece.Length, style);

    /// <summary>Width by length in one unit.</summary>
    public static string Size(Length width, Length length, UnitStyle style)
    {
        bool metric = style == UnitStyle.Metric;
        (double across, double along) = metric ? (width.Centimetres, length.Centimetres) : (width.Inches, length.Inches);
        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{across:0.#} × {along:0.#} {(metric ? "cm" : "in")}");
    }

    /// <summary>The size to expect after washing.</summary>
    public static string Expected(PiecePlan piece, UnitStyle style) => Size(piece.FinishedWidth.Value, piece.FinishedLength.Value, style);

    /// <summary>What the ends of the piece get, for example <c>with twisted fringe</c>; empty for nothing.</summary>
    public static string Ends(Piece piece) => (piece.Fringe, piece.Join) switch
    {
        (_, RingJoin.Plain) => "joined in a ring",
        (_, RingJoin.HalfTwist) => "joined in a ring with half a twist",
        (FringeStyle.Twisted, _) => "with twisted fringe",
        (FringeStyle.Knotted, _) => "with knotted fringe",
        (FringeStyle.Loose, _) => "with loose fringe",
        _ when piece.Hem > Length.Zero => "hemmed",
        _ => "",
    };

    /// <summary>How it lies on the loom; empty for flat.</summary>
    public static string Make(PieceMake make) => make switch
    {
        PieceMake.DoubleWidth => "woven double width in two layers",
        PieceMake.Tube => "woven as a tube",
        _ => "",
    };
}
