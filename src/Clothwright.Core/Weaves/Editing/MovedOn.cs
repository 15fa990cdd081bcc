using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>The threads move on along the line; those that leave their stretch at its end come in at its beginning.</summary>
/// <param name="Span">The stretch within which they move.</param>
/// <param name="By">How many threads they move on; below 0 back.</param>
public sealed record MovedOn(ThreadSpan Span, int By) : LineEdit(Span)
{
    private protected override ImmutableArray<T> Changed<T>(ImmutableArray<T> line)
    {
        int by = (By % Span.Count + Span.Count) % Span.Count;
        ImmutableArray<T> threads = Taken(line);
        return Replaced(line, [.. threads.AsSpan(Span.Count - by, by), .. threads.AsSpan(0, Span.Count - by)]);
    }
}
