using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>The floats of a cloth: of warp and weft, on face and back.</summary>
/// <param name="Reading">As an endless repeat, or as cut at the edges.</param>
/// <param name="WarpFace">Ends over picks.</param>
/// <param name="WarpBack">Ends under picks.</param>
/// <param name="WeftFace">Picks over ends.</param>
/// <param name="WeftBack">Picks under ends.</param>
public sealed record ClothFloats(ClothReading Reading, FloatTally WarpFace, FloatTally WarpBack, FloatTally WeftFace, FloatTally WeftBack)
{
    /// <summary>All four, in the order warp face, warp back, weft face, weft back.</summary>
    public ImmutableArray<FloatTally> All => [WarpFace, WarpBack, WeftFace, WeftBack];

    /// <summary>The floats of one kind.</summary>
    /// <param name="kind">Which thread, on which face.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is none of the four.</exception>
    public FloatTally this[FloatKind kind] => kind switch
    {
        FloatKind.WarpFace => WarpFace,
        FloatKind.WarpBack => WarpBack,
        FloatKind.WeftFace => WeftFace,
        FloatKind.WeftBack => WeftBack,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "There are four kinds of float."),
    };

    /// <summary>Finds every float of a cloth.</summary>
    /// <param name="cloth">The drawdown: one repeat, or the whole piece.</param>
    /// <param name="reading">As an endless repeat, or as cut at the edges.</param>
    public static ClothFloats Of(Drawdown cloth, ClothReading reading)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        return Of(new ClothLines(cloth), reading);
    }

    internal static ClothFloats Of(ClothLines lines, ClothReading reading)
    {
        (FloatTally warpBack, FloatTally warpFace) = FloatScan.Of(lines.EndRows, lines.Ends, reading, FloatKind.WarpBack, FloatKind.WarpFace);
        (FloatTally weftFace, FloatTally weftBack) = FloatScan.Of(lines.PickRows, lines.Picks, reading, FloatKind.WeftFace, FloatKind.WeftBack);
        return new ClothFloats(reading, warpFace, warpBack, weftFace, weftBack);
    }
}
