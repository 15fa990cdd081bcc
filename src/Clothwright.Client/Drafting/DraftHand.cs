namespace Clothwright.Client.Drafting;

/// <summary>What dragging over a draft does.</summary>
public enum DraftHand
{
    /// <summary>Fills or empties cells, or lays a yarn.</summary>
    Draw,

    /// <summary>Marks threads.</summary>
    Mark,

    /// <summary>Moves the paper.</summary>
    Move,
}
