using System.Collections.Immutable;
using Clothwright.Core.Weaves.Analysis.Edges;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Layers;

namespace Clothwright.Core.Weaves.Analysis;

/// <summary>What is worth marking in the drawing of a cloth, each in its place.</summary>
/// <param name="Floats">Floats that are marked, kind by kind; endless ones among them.</param>
/// <param name="FloatsInWords">Which floats these are, for example <c>5 threads or more</c>.</param>
/// <param name="LooseEnds">0-based ends that nothing holds, rising.</param>
/// <param name="LoosePicks">0-based picks that nothing holds, rising.</param>
/// <param name="Layers">The cloths that do not hang together, from the top; empty for one cloth.</param>
/// <param name="Turns">Turns of a shuttle started from the left that miss the edge end, each side and pick of a repeat once.</param>
/// <param name="PicksOfRepeat">Picks of one repeat, from which the picks of turns count round.</param>
public sealed record ClothMarks(
    ImmutableArray<ThreadFloat> Floats,
    string FloatsInWords,
    ImmutableArray<int> LooseEnds,
    ImmutableArray<int> LoosePicks,
    ImmutableArray<ClothLayer> Layers,
    ImmutableArray<MissedTurn> Turns,
    int PicksOfRepeat)
{
    /// <summary>Threads a float passes from which it is marked where nothing else is said.</summary>
    public const int UsualLongFloat = 5;

    /// <summary>The most floats that are marked.</summary>
    public const int MostFloats = 20_000;

    /// <summary>Whether there is nothing to mark.</summary>
    public bool IsEmpty => Floats.IsEmpty && LooseEnds.IsEmpty && LoosePicks.IsEmpty && Layers.IsEmpty && Turns.IsEmpty;

    /// <summary>Gathers the marks, with the floats that pass a number of threads or more.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="longFloat">Threads passed, 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="longFloat"/> is below 2.</exception>
    public static ClothMarks Of(ClothAnalysis cloth, int longFloat = UsualLongFloat)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(longFloat, 2);
        return Of(cloth, kind => longFloat - 1, $"over {longFloat} threads or more");
    }

    /// <summary>Gathers the marks, with the floats that are too long for what the cloth is for.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="advice">Floats held against the rule for the purpose.</param>
    /// <param name="ends">Spacing of the ends.</param>
    /// <param name="picks">Spacing of the picks.</param>
    public static ClothMarks Of(ClothAnalysis cloth, FloatAdvice advice, Quantities.Length ends, Quantities.Length picks)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return Of(
            cloth,
            kind => (int)Math.Min(int.MaxValue - 1, Math.Floor((advice.Rule.Longest.Metres / (kind is FloatKind.WarpFace or FloatKind.WarpBack ? picks : ends).Metres) + 1e-9)),
            $"longer than {Quantities.QuantityText.Format(Quantities.QuantityKind.Length, advice.Rule.Longest.Metres, Quantities.UnitStyle.Metric)}");
    }

    private static ClothMarks Of(ClothAnalysis cloth, Func<FloatKind, int> allowed, string inWords)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        return new ClothMarks(
            [.. cloth.Floats.All
                .Where(f => f.LongestLength > allowed(f.Kind))
                .SelectMany(f => LongFloats.Of(cloth.Drawdown, f.Kind, ClothReading.Repeat, allowed(f.Kind)))
                .Take(MostFloats)],
            inWords,
            [.. cloth.Layers.LooseEnds.Order()],
            [.. cloth.Layers.LoosePicks.Order()],
            cloth.Layers.Layers.Length > 1 ? cloth.Layers.Layers : [],
            // Of layers an edge end belongs to one alone, and turns from one to another are folds.
            cloth.Layers.Layers.Length > 1 ? [] : [.. cloth.SelvedgeFromLeft.Missed.DistinctBy(m => (m.Turn.Pick % cloth.Picks, m.Turn.Side))],
            cloth.Picks);
    }
}
