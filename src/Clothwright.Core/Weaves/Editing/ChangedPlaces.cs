using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>The threads change places with as many that follow them.</summary>
/// <param name="Span">The threads in front.</param>
public sealed record ChangedPlaces(ThreadSpan Span) : LineEdit(Span)
{
    private protected override ImmutableArray<T> Changed<T>(ImmutableArray<T> line)
    {
        if (Span.End + Span.Count > line.Length)
        {
            throw new InputProblemException(new InputProblem(
                $"{Span.Count} threads are to change places with those behind them, and {line.Length - Span.End} follow.",
                "draft",
                $"Mark at most {Math.Max(1, (line.Length - Span.First) / 2)} threads from thread {Span.First + 1} on."));
        }

        return
        [
            .. line.AsSpan(0, Span.First),
            .. line.AsSpan(Span.End, Span.Count),
            .. line.AsSpan(Span.First, Span.Count),
            .. line.AsSpan(Span.End + Span.Count, line.Length - Span.End - Span.Count),
        ];
    }
}
