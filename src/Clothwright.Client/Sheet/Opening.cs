namespace Clothwright.Client.Sheet;

/// <summary>What came of opening a worksheet.</summary>
public enum Opening
{
    /// <summary>It lies on the desk.</summary>
    Done,

    /// <summary>There is no such worksheet.</summary>
    Gone,

    /// <summary>The studio does not answer, and this browser has never seen the worksheet.</summary>
    Away,
}
