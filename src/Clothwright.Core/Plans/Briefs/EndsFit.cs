namespace Clothwright.Core.Plans.Briefs;

/// <summary>How the number of ends is fitted to the repeat of the draft.</summary>
public enum EndsFit
{
    /// <summary>Whole repeats, with balancing ends where the threading can be mirrored; the width gives way.</summary>
    WholeRepeats,

    /// <summary>As the width asks; the last repeat may be cut.</summary>
    Width,
}
