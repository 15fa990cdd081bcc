using System.Collections.Immutable;
using System.Numerics;
using Clothwright.Core.Weaves.Analysis.Threads;

namespace Clothwright.Core.Weaves.Analysis;

/// <summary>How often each end and each pick changes face in one repeat of the weave, read endlessly in both directions.</summary>
/// <remarks>
/// N1 = changes of face of an end down the picks, N2 = changes of face of a pick across the ends, both round the repeat.
/// With R1 ends and R2 picks, M1 = R1·R2 / ΣN2 governs the spacing of ends and M2 = R1·R2 / ΣN1 that of picks.
/// A thread that never changes face does not interlace: it is loose, or belongs to another layer, and no sett follows from it.
/// </remarks>
/// <param name="TransitionsPerEnd">N1 by 0-based end.</param>
/// <param name="TransitionsPerPick">N2 by 0-based pick.</param>
public sealed record WeaveCounts(ImmutableArray<int> TransitionsPerEnd, ImmutableArray<int> TransitionsPerPick)
{
    /// <summary>Ends of the repeat, R1.</summary>
    public int Ends => TransitionsPerEnd.Length;

    /// <summary>Picks of the repeat, R2.</summary>
    public int Picks => TransitionsPerPick.Length;

    /// <summary>Sum of N1 over the ends.</summary>
    public long WarpTransitions { get; } = Sum(TransitionsPerEnd);

    /// <summary>Sum of N2 over the picks.</summary>
    public long WeftTransitions { get; } = Sum(TransitionsPerPick);

    /// <summary>M1 = R1·R2 / ΣN2, ends for each crossing-over of the weft: it governs how close the ends can lie. Infinite if no pick interlaces.</summary>
    public double MeanEndFloat => (double)Ends * Picks / WeftTransitions;

    /// <summary>M2 = R1·R2 / ΣN1, picks for each crossing-over of the warp: it governs how close the picks can lie. Infinite if no end interlaces.</summary>
    public double MeanPickFloat => (double)Ends * Picks / WarpTransitions;

    /// <summary>Changes of face of end and pick at each crossing, 1/M1 + 1/M2: 2 for plain weave, 1 for 2/2 twill. The higher, the firmer.</summary>
    /// <remarks>Crossing-over firmness factor of Morino and others, from memory.</remarks>
    public double CrossingOverFirmness => (double)(WarpTransitions + WeftTransitions) / ((double)Ends * Picks);

    /// <summary>0-based ends that never change face.</summary>
    public ImmutableArray<int> IdleEnds => Idle(TransitionsPerEnd);

    /// <summary>0-based picks that never change face.</summary>
    public ImmutableArray<int> IdlePicks => Idle(TransitionsPerPick);

    /// <summary>Whether every end and every pick interlaces.</summary>
    public bool EveryThreadInterlaces => !TransitionsPerEnd.Contains(0) && !TransitionsPerPick.Contains(0);

    /// <summary>Counts the changes of face.</summary>
    /// <param name="cloth">One repeat of the weave.</param>
    public static WeaveCounts Of(Drawdown cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        return Of(new ClothLines(cloth));
    }

    internal static WeaveCounts Of(ClothLines lines) => new(
        PerLine(lines.EndRows, lines.Ends, RepeatLength.Whole(lines.Picks.ClassOf.AsSpan())),
        PerLine(lines.PickRows, lines.Picks, RepeatLength.Whole(lines.Ends.ClassOf.AsSpan())));

    /// <inheritdoc />
    public bool Equals(WeaveCounts? other) => other is not null
        && TransitionsPerEnd.AsSpan().SequenceEqual(other.TransitionsPerEnd.AsSpan())
        && TransitionsPerPick.AsSpan().SequenceEqual(other.TransitionsPerPick.AsSpan());

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Ends, Picks, WarpTransitions, WeftTransitions);

    // Of each line one repeat is looked at, which fits in a whole number of times.
    private static ImmutableArray<int> PerLine(Drawdown rows, LineClasses classes, int repeat)
    {
        var counts = new int[rows.Picks];
        int last = repeat - 1;
        int words = Drawdown.WordsFor(repeat);
        ulong mask = Drawdown.LastMask(repeat);
        for (int line = 0; line < counts.Length; line++)
        {
            // A line shifted by one thread differs from itself where the face changes; the first thread follows the last.
            ReadOnlySpan<ulong> row = rows.Row(line)[..words];
            ulong carry = (row[last >> 6] >> (last & 63)) & 1;
            int changes = 0;
            for (int i = 0; i < row.Length; i++)
            {
                ulong word = row[i];
                ulong change = word ^ ((word << 1) | carry);
                if (i == row.Length - 1) change &= mask;
                changes = unchecked(changes + BitOperations.PopCount(change));
                carry = word >> 63;
            }

            counts[line] = changes * (rows.Ends / repeat);
        }

        var ofLine = new int[classes.ClassOf.Length];
        for (int line = 0; line < ofLine.Length; line++) ofLine[line] = counts[classes.ClassOf[line]];
        return ImmutableArray.Create(ofLine);
    }

    private static long Sum(ImmutableArray<int> counts)
    {
        long sum = 0;
        foreach (int count in counts) sum += count;
        return sum;
    }

    private static ImmutableArray<int> Idle(ImmutableArray<int> counts) =>
        [.. Enumerable.Range(0, counts.Length).Where(i => counts[i] == 0)];
}
