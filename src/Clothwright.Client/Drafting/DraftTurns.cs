namespace Clothwright.Client.Drafting;

/// <summary>What a way round means for each axis of a draft.</summary>
/// <param name="ThreadingBelow">The threading lies below the cloth.</param>
/// <param name="EndsFromRight">End 1 lies at the right.</param>
/// <param name="TreadsLeft">The treadling lies at the left.</param>
/// <param name="FirstPickAtTop">The first pick lies at the top.</param>
public readonly record struct DraftTurns(bool ThreadingBelow, bool EndsFromRight, bool TreadsLeft, bool FirstPickAtTop)
{
    /// <summary>The axes of a way round.</summary>
    /// <param name="way">The way round.</param>
    public static DraftTurns Of(DraftWay way) => way switch
    {
        DraftWay.UpperRight => new(false, true, false, true),
        DraftWay.UpperLeft => new(false, false, true, true),
        DraftWay.LowerRight => new(true, true, false, false),
        DraftWay.LowerLeft => new(true, false, true, false),
        _ => new(false, false, false, false),
    };

    /// <summary>As the script takes it: one bit an axis.</summary>
    internal int Bits => (ThreadingBelow ? 1 : 0) | (EndsFromRight ? 2 : 0) | (TreadsLeft ? 4 : 0) | (FirstPickAtTop ? 8 : 0);
}
