namespace Clothwright.Core.Weaves.Editing;

/// <summary>What is the matter with a place of a draft.</summary>
public enum TroubleKind
{
    /// <summary>A thread floats too far.</summary>
    LongFloat,

    /// <summary>A thread lies on one side throughout: nothing holds it.</summary>
    NeverHeld,

    /// <summary>An end is on no shaft.</summary>
    Unthreaded,

    /// <summary>The shuttle turns without catching the edge end.</summary>
    LooseTurn,

    /// <summary>A pick goes into the shed of the one before and pulls out.</summary>
    SameShed,

    /// <summary>The cloth falls into layers that lie on each other.</summary>
    Layers,
}
