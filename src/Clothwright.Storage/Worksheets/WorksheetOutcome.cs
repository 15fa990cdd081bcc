using Clothwright.Interchange.Http;

namespace Clothwright.Storage.Worksheets;

/// <summary>What came of saving a worksheet.</summary>
public abstract record WorksheetOutcome
{
    private WorksheetOutcome()
    {
    }

    /// <summary>It is on the disk.</summary>
    /// <param name="Worksheet">The worksheet with its new version.</param>
    /// <param name="Created">Whether it was the first save.</param>
    public sealed record Saved(SavedWorksheet Worksheet, bool Created) : WorksheetOutcome;

    /// <summary>It was based on another version than the one that stands; nothing was changed.</summary>
    /// <param name="Current">What stands.</param>
    public sealed record Conflict(KeptWorksheet Current) : WorksheetOutcome;

    /// <summary>There is no such worksheet, or no such version of it; nothing was changed.</summary>
    public sealed record NotThere : WorksheetOutcome;
}
