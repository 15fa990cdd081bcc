namespace Clothwright.Drawing.Drafts;

/// <summary>One thread of a drawing.</summary>
/// <param name="Thread">0-based end or pick.</param>
/// <param name="BreakAfter">Whether repeats are left out after it.</param>
internal readonly record struct AxisSlot(int Thread, bool BreakAfter);
