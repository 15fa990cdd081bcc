namespace Clothwright.Core.Yarns;

/// <summary>How much handwoven cloth of a fibre shrinks in its first washing, from the reed to washed, each way.</summary>
public enum RelaxationClass
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>Under 4 %.</summary>
    Low,

    /// <summary>2 to 6 %.</summary>
    LowToMedium,

    /// <summary>4 to 8 %.</summary>
    Medium,

    /// <summary>6 to 12 %.</summary>
    MediumToHigh,

    /// <summary>8 to 15 %.</summary>
    High,
}
