using System.Collections.Immutable;

namespace Clothwright.Drawing.Fonts;

/// <summary>A line of text in which faces change.</summary>
/// <param name="Runs">What stands in it, each with its left end in points from the beginning of the line.</param>
internal sealed record MixedLine(ImmutableArray<(TextRun Run, float X)> Runs);
