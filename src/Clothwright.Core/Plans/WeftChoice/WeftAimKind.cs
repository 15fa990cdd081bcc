namespace Clothwright.Core.Plans.WeftChoice;

/// <summary>What a weft is looked for.</summary>
public enum WeftAimKind
{
    /// <summary>The pattern is to be as clear as it can be.</summary>
    Clear,

    /// <summary>The cloth is to change its colour most as it moves.</summary>
    Shimmer,

    /// <summary>The face is to have a colour from afar.</summary>
    Colour,
}
