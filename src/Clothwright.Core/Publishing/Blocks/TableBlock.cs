using System.Collections.Immutable;

namespace Clothwright.Core.Publishing.Blocks;

/// <summary>A table of words and numbers.</summary>
/// <param name="Columns">The columns, left to right.</param>
/// <param name="Rows">The rows; each has as many cells as there are columns.</param>
public sealed record TableBlock(ImmutableArray<TableColumn> Columns, ImmutableArray<TableRow> Rows) : HandoutBlock;
