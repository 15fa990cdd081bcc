namespace Clothwright.Core.Weaves.RigidHeddles;

/// <summary>Where a rigid heddle is held.</summary>
public enum HeddlePosition
{
    /// <summary>In the middle: its eye ends lie level with the slot ends.</summary>
    Rest,

    /// <summary>In the upper blocks: its eye ends rise.</summary>
    Up,

    /// <summary>In the lower blocks: its eye ends sink.</summary>
    Down,
}
