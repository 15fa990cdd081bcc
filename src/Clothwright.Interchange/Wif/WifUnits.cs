namespace Clothwright.Interchange.Wif;

/// <summary>Units of spacing and thickness.</summary>
public enum WifUnits
{
    /// <summary>1/720 inch; meant where no unit is named.</summary>
    Decipoints,

    /// <summary>International inches.</summary>
    Inches,

    /// <summary>Centimetres.</summary>
    Centimeters,
}
