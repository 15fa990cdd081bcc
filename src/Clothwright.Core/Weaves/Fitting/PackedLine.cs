using System.Runtime.InteropServices;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>A line of the drawdown as a key.</summary>
internal readonly struct PackedLine(ulong[] words) : IEquatable<PackedLine>
{
    private readonly ulong[] _words = words;

    public bool Equals(PackedLine other) => _words.AsSpan().SequenceEqual(other._words);

    public override bool Equals(object? obj) => obj is PackedLine other && Equals(other);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        hash.AddBytes(MemoryMarshal.AsBytes(_words.AsSpan()));
        return hash.ToHashCode();
    }
}
