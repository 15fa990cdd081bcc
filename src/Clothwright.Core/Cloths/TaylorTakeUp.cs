using System.Globalization;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths;

/// <summary>Taylor's rule for cotton: warp take-up % = multiplier × warp intersections per inch ÷ weft count.</summary>
/// <remarks>Read in Taylor, p. 426-429; made on mill yarns of count 20 and finer. For thick handweaving yarns it runs high.</remarks>
public static class TaylorTakeUp
{
    /// <summary>Multiplier for close cloths.</summary>
    public const double CloseMultiplier = 4;

    /// <summary>Multiplier for cloths of medium closeness.</summary>
    public const double MediumMultiplier = 3;

    private static readonly Source Origin = Source.Published("Taylor, Cotton Weaving and Designing, 6th ed., p. 426-429");

    private static readonly Derived<Number> Multiplier = Derived.FromRange("Taylor's multiplier", Number.FromValue(MediumMultiplier), Number.FromValue(CloseMultiplier), Origin);

    /// <summary>Warp take-up in percent of the yarn.</summary>
    /// <param name="multiplier">4 for close cloths, 3 for medium.</param>
    /// <param name="intersectionsPerInch">Changes of face of an end per inch: picks per inch ÷ mean float.</param>
    /// <param name="weftCottonCount">Cotton count of the weft.</param>
    public static double Percent(double multiplier, double intersectionsPerInch, double weftCottonCount) =>
        multiplier * intersectionsPerInch / weftCottonCount;

    /// <summary>Warp take-up with its working.</summary>
    /// <param name="picks">Picks per length.</param>
    /// <param name="weft">Mass per length of the weft.</param>
    /// <param name="meanFloat">Picks for each change of face of an end.</param>
    public static Derived<Ratio> Of(Derived<Sett> picks, Derived<LinearDensity> weft, double meanFloat) => Derived.From<Ratio>(
        "warp take-up by Taylor",
        new Rule(
            "Taylor, cotton mills",
            $"multiplier × picks per inch ÷ {meanFloat.ToString("0.###", CultureInfo.InvariantCulture)} ÷ cotton count of the weft, in %; made on yarns of count 20 and finer",
            Origin),
        Multiplier,
        picks,
        weft,
        (m, n, tex) => Percent(m, n * Length.MetresPerInch / meanFloat, Setts.Diameters.PeirceDiameter.TexOfCottonCountOne / tex) / 100);
}
