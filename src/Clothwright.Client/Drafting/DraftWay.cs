namespace Clothwright.Client.Drafting;

/// <summary>Which way round a draft is drawn.</summary>
public enum DraftWay
{
    /// <summary>As it stands at the loom: first pick at the bottom, threading above, end 1 at the left, treadling at the right.</summary>
    AtTheLoom,

    /// <summary>Read outward from a tie-up at the upper right: end 1 at the right, first pick at the top.</summary>
    UpperRight,

    /// <summary>Read outward from a tie-up at the upper left: end 1 at the left, first pick at the top.</summary>
    UpperLeft,

    /// <summary>Read outward from a tie-up at the lower right: end 1 at the right, first pick at the bottom, threading below.</summary>
    LowerRight,

    /// <summary>Read outward from a tie-up at the lower left: end 1 at the left, first pick at the bottom, threading below.</summary>
    LowerLeft,
}
