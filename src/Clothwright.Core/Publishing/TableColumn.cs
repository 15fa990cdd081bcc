namespace Clothwright.Core.Publishing;

/// <summary>A column of a table.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="IsNumber">Whether it holds numbers, which stand against its right edge.</param>
public sealed record TableColumn(string Heading, bool IsNumber = false)
{
    /// <summary>Whether it is left free to write in by hand.</summary>
    public bool IsBlank { get; init; }
}
