using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>The threads are followed by themselves in reverse; the one at which they turn is not doubled, so that they come to a point.</summary>
/// <param name="Span">The threads mirrored.</param>
public sealed record BackAgain(ThreadSpan Span) : LineEdit(Span)
{
    private protected override long LengthFrom(int length) => length + Span.Count - 1L;

    private protected override ImmutableArray<T> Changed<T>(ImmutableArray<T> line)
    {
        ImmutableArray<T> there = Taken(line);
        return Replaced(line, [.. there, .. there.Reverse().Skip(1)]);
    }
}
