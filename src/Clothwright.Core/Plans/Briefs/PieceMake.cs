namespace Clothwright.Core.Plans.Briefs;

/// <summary>How a piece lies on the loom.</summary>
public enum PieceMake
{
    /// <summary>One layer, as wide on the loom as off it.</summary>
    Flat,

    /// <summary>Two layers joined by a fold at one side; opens to twice the width on the loom.</summary>
    DoubleWidth,

    /// <summary>Two layers joined at both sides; its width is measured lying flat, half its girth.</summary>
    Tube,
}
