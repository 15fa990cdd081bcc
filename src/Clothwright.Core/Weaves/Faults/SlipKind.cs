namespace Clothwright.Core.Weaves.Faults;

/// <summary>The kinds of slips made in dressing and weaving.</summary>
public enum SlipKind
{
    /// <summary>An end hangs on another shaft.</summary>
    WrongHeddle,

    /// <summary>Two neighbouring ends have changed places.</summary>
    CrossedEnds,

    /// <summary>An end is missing.</summary>
    EndLeftOut,

    /// <summary>An end lies there twice.</summary>
    EndDoubled,

    /// <summary>A dent was left empty, or holds one end too many.</summary>
    MissedDent,

    /// <summary>A pick was woven with other treadles.</summary>
    WrongTreadle,

    /// <summary>A pick is missing.</summary>
    PickLeftOut,

    /// <summary>A pick was woven twice.</summary>
    PickDoubled,

    /// <summary>A treadle is tied to a shaft too many or too few.</summary>
    WrongTie,
}
