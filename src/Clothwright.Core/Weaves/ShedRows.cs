using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Clothwright.Core.Weaves;

/// <summary>Packed rows of the ends that a lift moves, joined from tables of several shafts at once.</summary>
/// <remarks>
/// The shafts are cut into groups of neighbours; for each group the ends of every set of its shafts are joined once, so that a lift
/// takes one row a group instead of one a shaft (the table look-up of V. L. Arlazarov and others, 1970, from memory).
/// </remarks>
internal sealed class ShedRows
{
    private const int LargestGroup = 8;

    private readonly int _words;
    private readonly int _group;
    private readonly ulong[] _table;

    /// <param name="shafts">The ends on each shaft, as packed rows.</param>
    /// <param name="words">Words in a row.</param>
    /// <param name="highest">The highest shaft in use, from 1; 0 for none.</param>
    /// <param name="lifts">How many different lifts will be asked for.</param>
    public ShedRows(ulong[] shafts, int words, int highest, int lifts)
    {
        _words = words;
        _group = GroupFor(highest, lifts);
        int groups = (highest + _group - 1) / _group;
        int sets = 1 << _group;
        _table = new ulong[groups * sets * words];
        for (int group = 0; group < groups; group++)
        {
            for (int set = 1; set < sets; set++)
            {
                // All but the lowest shaft of the set have been joined before.
                int shaft = group * _group + BitOperations.TrailingZeroCount(set);
                if (shaft >= highest) continue;
                Join(Row(group, set), Row(group, set & (set - 1)), shafts.AsSpan(shaft * words, words));
            }
        }
    }

    /// <summary>Writes the ends that a lift moves.</summary>
    /// <param name="row">The row; whatever it holds is overwritten.</param>
    /// <param name="lift">One bit a shaft.</param>
    public void Open(Span<ulong> row, ulong lift)
    {
        ulong sets = (1UL << _group) - 1;
        int used = 0;
        ReadOnlySpan<ulong> first = default;
        for (int group = 0; lift != 0; group++, lift >>= _group)
        {
            int set = (int)(lift & sets);
            if (set == 0) continue;
            Span<ulong> moved = Row(group, set);
            if (used == 0) first = moved;
            else if (used == 1) Join(row, first, moved);
            else Join(row, row, moved);
            used++;
        }

        if (used == 0) row.Clear();
        else if (used == 1) first.CopyTo(row);
    }

    // Making a table costs a row for each set of a group's shafts; using it, a row a group for each lift.
    private static int GroupFor(int highest, int lifts)
    {
        int best = 1;
        long least = long.MaxValue;
        for (int group = 1; group <= LargestGroup; group++)
        {
            long rows = (long)((highest + group - 1) / group) * ((1 << group) + lifts);
            if (rows < least) (best, least) = (group, rows);
        }

        return best;
    }

    // The rows are all of one length.
    private static void Join(Span<ulong> row, ReadOnlySpan<ulong> one, ReadOnlySpan<ulong> other)
    {
        int i = 0;
        if (Vector256.IsHardwareAccelerated) i = JoinWide(row, one, other);
        ref ulong to = ref MemoryMarshal.GetReference(row);
        ref ulong left = ref MemoryMarshal.GetReference(one);
        ref ulong right = ref MemoryMarshal.GetReference(other);
        for (; i + Vector128<ulong>.Count <= row.Length; i += Vector128<ulong>.Count)
        {
            (Vector128.LoadUnsafe(ref left, (nuint)i) | Vector128.LoadUnsafe(ref right, (nuint)i)).StoreUnsafe(ref to, (nuint)i);
        }

        for (; i < row.Length; i++) row[i] = one[i] | other[i];
    }

    private static int JoinWide(Span<ulong> row, ReadOnlySpan<ulong> one, ReadOnlySpan<ulong> other)
    {
        int i = 0;
        for (; i + Vector256<ulong>.Count <= row.Length; i += Vector256<ulong>.Count)
        {
            (Vector256.Create(one[i..]) | Vector256.Create(other[i..])).CopyTo(row[i..]);
        }

        return i;
    }

    private Span<ulong> Row(int group, int set) => _table.AsSpan(((group << _group) + set) * _words, _words);
}
