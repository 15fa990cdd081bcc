namespace Clothwright.Interchange.Drafts;

/// <summary>What a file of a draft is, found by looking into it.</summary>
public enum DraftFileForm
{
    /// <summary>The open interchange standard WIF 1.1.</summary>
    Wif,

    /// <summary>A drawdown as lines of marks.</summary>
    TextGrid,

    /// <summary>A table of ends, treadles and picks with commas.</summary>
    Table,

    /// <summary>A picture; its cells are found by the drawing part.</summary>
    Picture,
}
