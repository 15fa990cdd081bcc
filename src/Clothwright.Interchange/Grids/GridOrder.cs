namespace Clothwright.Interchange.Grids;

/// <summary>Which way round the picks of a grid are written.</summary>
public enum GridOrder
{
    /// <summary>The first line is the first pick.</summary>
    FirstPickFirst,

    /// <summary>The last line is the first pick, as it lies nearest the weaver.</summary>
    FirstPickLast,
}
