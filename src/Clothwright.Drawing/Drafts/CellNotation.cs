namespace Clothwright.Drawing.Drafts;

/// <summary>How threading, tie-up and treadling are written.</summary>
public enum CellNotation
{
    /// <summary>With the number of the shaft or treadle.</summary>
    Numbers,

    /// <summary>With filled squares.</summary>
    Marks,
}
