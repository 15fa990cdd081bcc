namespace Clothwright.Core.Worksheets;

/// <summary>Which picks of a drawn draft are pattern picks, lying over a tabby ground.</summary>
public enum PatternPicks
{
    /// <summary>None: every pick is ground.</summary>
    None,

    /// <summary>The first, third, fifth …</summary>
    Odd,

    /// <summary>The second, fourth, sixth …</summary>
    Even,
}
