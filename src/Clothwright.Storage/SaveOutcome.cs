namespace Clothwright.Storage;

/// <summary>What came of a save.</summary>
public abstract record SaveOutcome
{
    private SaveOutcome()
    {
    }

    /// <summary>It is on the disk.</summary>
    /// <param name="Version">Its number.</param>
    /// <param name="Created">Whether it was the first.</param>
    public sealed record Saved(int Version, bool Created) : SaveOutcome;

    /// <summary>It was based on another version than the one that stands; nothing was changed.</summary>
    /// <param name="CurrentVersion">The version that stands.</param>
    public sealed record Conflict(int CurrentVersion) : SaveOutcome;

    /// <summary>It was based on a version of something that does not exist; nothing was changed.</summary>
    public sealed record NotThere : SaveOutcome;
}
