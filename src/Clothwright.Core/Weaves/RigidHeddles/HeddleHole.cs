namespace Clothwright.Core.Weaves.RigidHeddles;

/// <summary>An eye or a slot of a rigid heddle.</summary>
/// <param name="IsEye">Eye, or else slot.</param>
/// <param name="Number">Eyes count from the first one in use, which is 1; slot n lies right of eye n, so slots before eye 1 are 0, −1 …</param>
public readonly record struct HeddleHole(bool IsEye, int Number)
{
    /// <summary>For people, for example <c>eye 3</c> or <c>slot 3</c>; slots before eye 1 are counted to the left.</summary>
    public override string ToString() => IsEye ? $"eye {Number}" : Number >= 1 ? $"slot {Number}" : $"slot {1 - Number} left of eye 1";
}
