namespace Clothwright.Core.Workings;

/// <summary>How far a rule or a value can be trusted, by where it comes from.</summary>
public enum SourceKind
{
    /// <summary>Follows from exact definitions of units.</summary>
    Definition,

    /// <summary>Follows from geometry or algebra shown in the formula.</summary>
    Derivation,

    /// <summary>A published standard.</summary>
    Standard,

    /// <summary>A handbook, paper, table or worked example that was read.</summary>
    Published,

    /// <summary>Recalled from a named source and not read again.</summary>
    FromMemory,

    /// <summary>A habit of the trade for which no source is known.</summary>
    CommonPractice,

    /// <summary>Measured by the weaver, on her yarn, swatch or loom.</summary>
    Measured,

    /// <summary>Chosen by the weaver.</summary>
    Decision,
}
