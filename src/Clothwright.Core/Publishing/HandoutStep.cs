using System.Collections.Immutable;

namespace Clothwright.Core.Publishing;

/// <summary>One step of the work.</summary>
/// <param name="Title">The step in two or three words, for example <c>Sley</c>.</param>
/// <param name="Text">What to do, in sentences.</param>
public sealed record HandoutStep(string Title, string Text)
{
    /// <summary>Details one under another, for example the parts of a piece; empty if there are none.</summary>
    public ImmutableArray<string> Details { get; init; } = [];

    /// <summary>Places to tick off on the way; empty if the step is short.</summary>
    public ImmutableArray<TickRow> Ticks { get; init; } = [];
}
