using System.Collections.Immutable;

namespace Clothwright.Interchange.Csv;

/// <summary>One row of a table.</summary>
/// <param name="Line">Line in the file, from 1, where it ends.</param>
/// <param name="Cells">Its values.</param>
internal sealed record CsvRow(int Line, ImmutableArray<string> Cells)
{
    /// <summary>A value without blanks round it; empty where the row is shorter or there is no such column.</summary>
    public string this[int column] => column >= 0 && column < Cells.Length ? Cells[column].Trim() : "";
}
