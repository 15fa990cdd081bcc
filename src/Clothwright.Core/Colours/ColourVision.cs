namespace Clothwright.Core.Colours;

/// <summary>Kinds of colour vision.</summary>
public enum ColourVision
{
    /// <summary>Long-wave cones shifted or missing: reds look dark.</summary>
    Protan,

    /// <summary>Middle-wave cones shifted or missing: the commonest kind.</summary>
    Deutan,

    /// <summary>Short-wave cones shifted or missing: rare; the model is weakest here.</summary>
    Tritan,
}
