namespace Clothwright.Drawing.Drafts;

/// <summary>Which way round a draft is drawn.</summary>
public enum DraftOrientation
{
    /// <summary>As it stands at the loom: first pick at the bottom, nearest the weaver; threading above, beyond the fell; end 1 at the left.</summary>
    AtTheLoom,

    /// <summary>As in books that read outward from a tie-up at the upper right: end 1 at the right, first pick at the top.</summary>
    TieUpUpperRight,

    /// <summary>As in books that read outward from a tie-up at the upper left: end 1 at the left, first pick at the top.</summary>
    TieUpUpperLeft,

    /// <summary>As in books that read outward from a tie-up at the lower right: end 1 at the right, first pick at the bottom, threading below.</summary>
    TieUpLowerRight,

    /// <summary>As in books that read outward from a tie-up at the lower left: end 1 at the left, first pick at the bottom, threading below.</summary>
    TieUpLowerLeft,
}
