using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>The threads are left out.</summary>
/// <param name="Span">The threads left out.</param>
public sealed record TakenOut(ThreadSpan Span) : LineEdit(Span)
{
    private protected override long LengthFrom(int length) => length - Span.Count;

    private protected override ImmutableArray<T> Changed<T>(ImmutableArray<T> line) => Replaced(line, []);
}
