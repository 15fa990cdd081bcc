using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;

namespace Clothwright.Interchange.Csv;

/// <summary>What a table of yarns came to when it was read.</summary>
/// <param name="Yarns">Every yarn, in the order of its first row.</param>
/// <param name="Lines">The line of the first row of each yarn.</param>
/// <param name="Problems">What cannot be read, row by row, with line and column. While there is one, nothing should be kept.</param>
public sealed record YarnTableOutcome(ImmutableArray<YarnEntry> Yarns, ImmutableArray<int> Lines, ImmutableArray<InputProblem> Problems);
