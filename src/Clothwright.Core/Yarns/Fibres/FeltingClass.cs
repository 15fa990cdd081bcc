namespace Clothwright.Core.Yarns;

/// <summary>How readily a fibre felts when it is rubbed wet.</summary>
public enum FeltingClass
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>Treated so that it hardly does.</summary>
    Resisted,

    /// <summary>A little.</summary>
    Slight,

    /// <summary>With patience.</summary>
    Moderate,

    /// <summary>Quickly.</summary>
    Strong,
}
