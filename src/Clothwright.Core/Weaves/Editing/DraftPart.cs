namespace Clothwright.Core.Weaves.Editing;

/// <summary>A part of a draft that is drawn by itself.</summary>
public enum DraftPart
{
    /// <summary>Ends on shafts.</summary>
    Threading,

    /// <summary>Treadles tied to shafts.</summary>
    TieUp,

    /// <summary>Picks pressing treadles.</summary>
    Treadling,

    /// <summary>Picks moving shafts.</summary>
    LiftPlan,
}
