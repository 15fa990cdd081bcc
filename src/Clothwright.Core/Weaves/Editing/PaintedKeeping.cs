namespace Clothwright.Core.Weaves.Editing;

/// <summary>What of a draft stays when its cloth is painted on.</summary>
public enum PaintedKeeping
{
    /// <summary>Threading, tie-up and treadling are all new.</summary>
    Nothing,

    /// <summary>The threading stays.</summary>
    Threading,

    /// <summary>Threading and treadling stay; the tie-up is new.</summary>
    ThreadingAndTreadling,
}
