using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>How well clues fit a count and a fibre: likelihoods, to be compared with each other only.</summary>
internal static class YarnFit
{
    // Hand wraps are about 0.7 of the diameters that geometrically fit, and hands differ by a sixth.
    private const double HandWraps = 0.7;
    private const double WrapsDeviation = 0.15;
    private const double UnlistedWrapsDeviation = 0.3;
    private const double UnlistedBulkDensity = 0.8;

    // How often a hint speaks for a fibre that does not show it; a burn test misleads less often than a feel.
    private const double BurnMisleads = 0.03;
    private const double FeelMisleads = 0.15;
    private const double PliesMiscounted = 0.03;

    /// <summary>Fit of the measured mass per length to a count, as a density over the logarithm of the ratio.</summary>
    public static double OfSize(YarnCount count, LinearDensity measured, double relative)
    {
        Derived<LinearDensity> sold = count.ToLinearDensity();
        double tolerance = sold.StandardDeviation / sold.Value.Tex;
        return Normal(Math.Log(measured.Tex / sold.Value.Tex), Math.Sqrt(relative * relative + tolerance * tolerance));
    }

    private static double OfWraps(YarnClues clues, double tex, double bulkDensity, double deviation)
    {
        if (clues.Wraps is not { } wraps) return 1;
        double diameterMillimetres = Math.Sqrt(4 * tex / (1000 * Math.PI * bulkDensity));
        double expectedPerInch = HandWraps * Length.MetresPerInch * 1000 / diameterMillimetres;
        return Normal(Math.Log(wraps.PerInch / expectedPerInch), deviation);
    }

    /// <summary>Fit of the wraps to a listed yarn.</summary>
    public static double OfWraps(YarnClues clues, double tex, Density bulkDensity) => OfWraps(clues, tex, bulkDensity.GramsPerCubicCentimetre, WrapsDeviation);

    /// <summary>Fit of the wraps to a yarn of unknown make.</summary>
    public static double OfUnlistedWraps(YarnClues clues, double tex) => OfWraps(clues, tex, UnlistedBulkDensity, UnlistedWrapsDeviation);

    /// <summary>Fit of strands, fire and feel.</summary>
    public static double OfSigns(YarnClues clues, int plies, Fibre fibre)
    {
        double fit = 1;
        if (clues.Plies is { } seen) fit *= seen == plies ? 1 - PliesMiscounted : PliesMiscounted;
        if (clues.Burns is { } burns) fit *= BurnsSo(burns, fibre.Family) ? 1 - BurnMisleads : BurnMisleads;
        if (clues.Feels is { } feels) fit *= FeelsSo(feels, fibre.Family) ? 1 - FeelMisleads : FeelMisleads;
        return fit;
    }

    /// <summary>Fit of the signs to an unlisted yarn: nothing is known of it, so each fits as often as not.</summary>
    public static double OfUnlistedSigns(YarnClues clues) =>
        (clues.Plies is null ? 1 : 0.5) * (clues.Burns is null ? 1 : 0.5) * (clues.Feels is null ? 1 : 0.5);

    private static bool BurnsSo(BurnHint hint, FibreFamily family) => hint switch
    {
        BurnHint.BurntHair => family is FibreFamily.Wool or FibreFamily.Silk,
        BurnHint.BurntPaper => family is FibreFamily.Cotton or FibreFamily.Bast or FibreFamily.Regenerated,
        BurnHint.HardBead => family is FibreFamily.Synthetic or FibreFamily.Film,
        _ => family is FibreFamily.Acetate,
    };

    private static bool FeelsSo(FeelHint hint, FibreFamily family) => hint switch
    {
        FeelHint.Springy => family is FibreFamily.Wool,
        FeelHint.Silky => family is FibreFamily.Silk,
        FeelHint.SoftDull => family is FibreFamily.Cotton,
        FeelHint.Crisp => family is FibreFamily.Bast,
        FeelHint.Drapy => family is FibreFamily.Regenerated or FibreFamily.Acetate,
        FeelHint.Plastic => family is FibreFamily.Synthetic,
        _ => family is FibreFamily.Film,
    };

    // Density of a normal distribution about 0.
    private static double Normal(double x, double deviation) => Math.Exp(-x * x / (2 * deviation * deviation)) / (deviation * Math.Sqrt(2 * Math.PI));
}
