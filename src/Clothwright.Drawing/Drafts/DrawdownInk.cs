namespace Clothwright.Drawing.Drafts;

/// <summary>How the crossings of a drawdown are coloured.</summary>
public enum DrawdownInk
{
    /// <summary>Filled where the warp is on top, empty where the weft is.</summary>
    Structure,

    /// <summary>In the colour of the thread on top.</summary>
    Threads,
}
