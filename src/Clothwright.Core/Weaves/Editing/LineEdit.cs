using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>A change in the order of a line of threads, whatever is known of each: shafts, treadles or yarn.</summary>
/// <param name="Span">The threads it concerns.</param>
public abstract record LineEdit(ThreadSpan Span)
{
    /// <summary>The line as changed.</summary>
    /// <param name="line">What is known of each thread, first thread first.</param>
    /// <exception cref="ArgumentOutOfRangeException">The line does not have the threads concerned.</exception>
    /// <exception cref="InputProblemException">The line would grow beyond <see cref="DraftLimits.Picks"/>.</exception>
    public ImmutableArray<T> Apply<T>(ImmutableArray<T> line)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(Span.First, nameof(line));
        ArgumentOutOfRangeException.ThrowIfLessThan(Span.Count, 1, nameof(line));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Span.End, line.Length, nameof(line));
        if (LengthFrom(line.Length) > DraftLimits.Picks)
        {
            throw new InputProblemException(new InputProblem(
                $"That would make {LengthFrom(line.Length)} threads of {line.Length}.", "draft", $"Keep to {DraftLimits.Picks}: one repeat is enough."));
        }

        return Changed(line);
    }

    /// <summary>Threads of the line when it is changed.</summary>
    /// <param name="length">Threads of the line before.</param>
    private protected virtual long LengthFrom(int length) => length;

    /// <summary>The line as changed; the span lies within it.</summary>
    private protected abstract ImmutableArray<T> Changed<T>(ImmutableArray<T> line);

    private protected ImmutableArray<T> Taken<T>(ImmutableArray<T> line) => line.Slice(Span.First, Span.Count);

    private protected ImmutableArray<T> Replaced<T>(ImmutableArray<T> line, ImmutableArray<T> with) =>
        [.. line.AsSpan(0, Span.First), .. with, .. line.AsSpan(Span.End, line.Length - Span.End)];
}
