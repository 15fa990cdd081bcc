namespace Clothwright.Drawing.Drafts;

/// <summary>A bracket over one repeat.</summary>
/// <param name="FirstSlot">0-based first slot under it.</param>
/// <param name="LastSlot">0-based last slot under it.</param>
/// <param name="Text">How often it is worked.</param>
internal readonly record struct AxisBracket(int FirstSlot, int LastSlot, string Text);
