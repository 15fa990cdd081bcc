using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>The last thread comes first: what went up goes down.</summary>
/// <param name="Span">The threads turned round.</param>
public sealed record LastFirst(ThreadSpan Span) : LineEdit(Span)
{
    private protected override ImmutableArray<T> Changed<T>(ImmutableArray<T> line) => Replaced(line, [.. Taken(line).Reverse()]);
}
