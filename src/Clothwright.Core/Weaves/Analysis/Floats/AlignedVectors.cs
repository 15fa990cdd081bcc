using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>A row of vectors that begin where a line of the processor's cache begins, so that none is read or written in two halves.</summary>
internal sealed class AlignedVectors
{
    private const int CacheLine = 64;

    private readonly ulong[] _words;
    private readonly int _first;
    private readonly int _count;

    /// <param name="count">Vectors, all bits 0.</param>
    public AlignedVectors(int count)
    {
        _count = count * Vector512<ulong>.Count;

        // Pinned, so that it stays where it is found.
        _words = GC.AllocateArray<ulong>(_count + (CacheLine / sizeof(ulong)), pinned: true);
        long past = Marshal.UnsafeAddrOfPinnedArrayElement(_words, 0).ToInt64() & (CacheLine - 1);
        _first = past == 0 ? 0 : (int)((CacheLine - past) / sizeof(ulong));
    }

    /// <summary>The vectors.</summary>
    public Span<Vector512<ulong>> Span => MemoryMarshal.Cast<ulong, Vector512<ulong>>(_words.AsSpan(_first, _count));
}
