using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>The threads are followed by themselves.</summary>
/// <param name="Span">The threads repeated.</param>
/// <param name="Times">How often more; 1 or more.</param>
public sealed record OnceMore(ThreadSpan Span, int Times = 1) : LineEdit(Span)
{
    private protected override long LengthFrom(int length) => length + (long)Span.Count * Math.Max(0, Times);

    private protected override ImmutableArray<T> Changed<T>(ImmutableArray<T> line)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(Times, 1, nameof(line));
        return Replaced(line, [.. Enumerable.Repeat(Taken(line), Times + 1).SelectMany(threads => threads)]);
    }
}
