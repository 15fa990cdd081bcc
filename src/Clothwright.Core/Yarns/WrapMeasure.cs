namespace Clothwright.Core.Yarns;

/// <summary>What a number of wraps counts. The two differ by about a third and are never mixed.</summary>
public enum WrapMeasure
{
    /// <summary>Wrapped round a ruler by hand, side by side without pressing: looser than the threads lie in cloth.</summary>
    Hand,

    /// <summary>Diameters of the thread side by side, as measured under a glass or computed.</summary>
    Geometric,
}
