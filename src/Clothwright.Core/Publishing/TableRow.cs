using System.Collections.Immutable;
using Clothwright.Core.Colours;

namespace Clothwright.Core.Publishing;

/// <summary>A row of a table.</summary>
/// <param name="Cells">One text a column.</param>
/// <param name="Chip">A colour shown beside the first cell, which also names it; null for none.</param>
public sealed record TableRow(ImmutableArray<string> Cells, SrgbColour? Chip = null);
