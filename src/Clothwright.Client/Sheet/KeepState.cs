namespace Clothwright.Client.Sheet;

/// <summary>Whether the last step is safe.</summary>
public enum KeepState
{
    /// <summary>It is kept.</summary>
    Kept,

    /// <summary>It is being kept.</summary>
    Keeping,

    /// <summary>The browser refused to keep it.</summary>
    Refused,
}
