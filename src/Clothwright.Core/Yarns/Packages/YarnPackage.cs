using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>One package of yarn on the shelf.</summary>
/// <param name="Form">Ball, skein, cone or tube.</param>
/// <param name="GrossMass">What the scale shows, support and all.</param>
/// <param name="Tare">Mass of the empty support; 0 for a ball or skein.</param>
public sealed record YarnPackage(PackageForm Form, Mass GrossMass, Mass Tare)
{
    /// <summary>Dye lot or batch; null if unknown.</summary>
    public string? Lot { get; init; }

    /// <summary>Relative humidity of the room when weighed; null if unknown (65 % is then assumed).</summary>
    public Ratio? RelativeHumidity { get; init; }

    /// <summary>How it is known what the package weighs.</summary>
    public MassBasis Basis { get; init; }
}
