using System.Collections.Immutable;
using Clothwright.Core.Weaves.Analysis.Threads;

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

    internal static ClothFloats Of(ClothLines lines, ClothReading reading, Func<LaneFollower>? follower = null)
    {
        // Round the repeat, a line is its own repeat so many times over: the shortest is measured and counted as often as it fits in.
        Drawdown cloth = lines.Cloth;
        bool round = reading == ClothReading.Repeat;
        int picks = round ? RepeatLength.Whole(lines.Picks.ClassOf.AsSpan()) : cloth.Picks;
        int ends = round ? RepeatLength.Whole(lines.Ends.ClassOf.AsSpan()) : cloth.Ends;
        Drawdown endsByPicks = lines.ClassTable;
        Drawdown picksByEnds = endsByPicks.Transposed();
        (RunTally warpBack, RunTally warpFace) = FloatScan.Of(
            FloatLanes.Of(lines.Ends, endsByPicks, picksByEnds), [.. lines.Picks.ClassOf.AsSpan(0, picks)], reading, lines.EndRows, lines.Ends, follower?.Invoke());
        (RunTally weftFace, RunTally weftBack) = FloatScan.Of(
            FloatLanes.Of(lines.Picks, picksByEnds, endsByPicks), [.. lines.Ends.ClassOf.AsSpan(0, ends)], reading, lines.PickRows, lines.Picks, follower?.Invoke());
        return new ClothFloats(
            reading,
            warpFace.Finish(FloatKind.WarpFace, cloth.Picks / picks),
            warpBack.Finish(FloatKind.WarpBack, cloth.Picks / picks),
            weftFace.Finish(FloatKind.WeftFace, cloth.Ends / ends),
            weftBack.Finish(FloatKind.WeftBack, cloth.Ends / ends));
    }
}
