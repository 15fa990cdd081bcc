using System.Collections.Immutable;

namespace Clothwright.Interchange.Csv;

/// <summary>How someone's table of yarns is to be read.</summary>
/// <param name="Separator">What stands between the cells: a comma, semicolon, tab or upright stroke.</param>
/// <param name="DecimalComma">Whether 7,5 means seven and a half.</param>
/// <param name="HasHeader">Whether the first row names the columns.</param>
/// <param name="Columns">What each column tells, from the left.</param>
public sealed record YarnTableMapping(char Separator, bool DecimalComma, bool HasHeader, ImmutableArray<YarnColumn> Columns)
{
    /// <summary>Every separator that is known.</summary>
    public static ImmutableArray<char> Separators { get; } = [',', ';', '\t', '|'];
}
