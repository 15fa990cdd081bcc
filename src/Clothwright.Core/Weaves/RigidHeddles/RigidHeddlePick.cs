namespace Clothwright.Core.Weaves.RigidHeddles;

/// <summary>What to do for one pick on a rigid-heddle loom.</summary>
/// <param name="Shed">How the heddles are held; null if the shed cannot be made.</param>
/// <param name="Stick">Number of the pick-up stick to bring forward; 0 for none.</param>
/// <param name="Reason">Why the shed cannot be made; empty if it can.</param>
public sealed record RigidHeddlePick(RigidHeddleShed? Shed, int Stick, string Reason)
{
    /// <summary>Whether the shed can be made.</summary>
    public bool CanBeMade => Shed is not null;

    /// <summary>For people.</summary>
    public override string ToString() => Shed is null ? $"cannot be made: {Reason}" : Stick == 0 ? $"{Shed}" : $"{Shed}, stick {Stick} forward";
}
