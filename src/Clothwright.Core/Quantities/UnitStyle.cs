namespace Clothwright.Core.Quantities;

/// <summary>The units in which a person reads.</summary>
public enum UnitStyle
{
    /// <summary>Metres, centimetres, grams, threads per centimetre.</summary>
    Metric,

    /// <summary>Yards, inches, ounces, threads per inch.</summary>
    Customary,
}
