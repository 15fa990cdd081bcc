namespace Clothwright.Core.Looms;

/// <summary>How a loom opens its shed.</summary>
public enum ShedAction
{
    /// <summary>Tied shafts rise, the others stay (jack).</summary>
    Rising,

    /// <summary>Tied shafts sink, the others stay.</summary>
    Sinking,

    /// <summary>Shafts hang in pairs: as some sink the others rise.</summary>
    Counterbalance,

    /// <summary>Every shaft is tied, either to rise or to sink.</summary>
    Countermarche,

    /// <summary>Each shaft by its own lever.</summary>
    Levers,
}
