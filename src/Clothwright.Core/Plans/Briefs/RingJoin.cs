namespace Clothwright.Core.Plans.Briefs;

/// <summary>How the ends of a piece are joined to each other.</summary>
public enum RingJoin
{
    /// <summary>Not joined.</summary>
    None,

    /// <summary>Joined face to face into a plain ring.</summary>
    Plain,

    /// <summary>One end turned over by half a turn before joining, so that the ring shows both faces.</summary>
    HalfTwist,
}
