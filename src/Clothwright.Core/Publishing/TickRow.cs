using System.Collections.Immutable;

namespace Clothwright.Core.Publishing;

/// <summary>Places to tick off while a long step is under way.</summary>
/// <param name="Caption">What a tick stands for, for example <c>end reached</c>.</param>
/// <param name="Marks">What is written at each place to tick.</param>
public sealed record TickRow(string Caption, ImmutableArray<string> Marks);
