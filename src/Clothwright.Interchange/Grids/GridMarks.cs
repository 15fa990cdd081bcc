using System.Buffers;

namespace Clothwright.Interchange.Grids;

/// <summary>The two marks of a grid.</summary>
/// <param name="Warp">Warp on top.</param>
/// <param name="Weft">Weft on top.</param>
public readonly record struct GridMarks(char Warp, char Weft)
{
    /// <summary>1 and 0.</summary>
    public static GridMarks Digits { get; } = new('1', '0');

    /// <summary># and full stop.</summary>
    public static GridMarks Hashes { get; } = new('#', '.');

    /// <summary>X and blank.</summary>
    public static GridMarks Crosses { get; } = new('X', ' ');

    /// <summary>Characters read as warp on top.</summary>
    internal static SearchValues<char> WarpMarks { get; } = SearchValues.Create("1#Xx*█■▓●");

    /// <summary>Characters read as weft on top; a blank is one of them where a grid has no other.</summary>
    internal static SearchValues<char> WeftMarks { get; } = SearchValues.Create("0.-_·□░○");
}
