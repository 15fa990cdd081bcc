using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Threads;

namespace Clothwright.Cli.Reports;

/// <summary>The symmetries of a cloth in words.</summary>
internal static class SymmetryWords
{
    // Every place of the repeat is tried as a centre: above this size that takes too long to be worth knowing.
    private const long MostCrossings = 40_000;

    private static readonly (ClothSymmetries Symmetry, string Words)[] Words =
    [
        (ClothSymmetries.SideToSide, "left and right alike"),
        (ClothSymmetries.EndToEnd, "first and last picks alike"),
        (ClothSymmetries.HalfTurn, "alike turned half round"),
        (ClothSymmetries.QuarterTurn, "alike turned a quarter round"),
        (ClothSymmetries.FacesAlike, "both faces alike"),
        (ClothSymmetries.Counterchange, "warp and weft change places"),
        (ClothSymmetries.WarpAsWeft, "alike with the draft turned"),
    ];

    /// <summary>One phrase for each symmetry; null where the repeat is too large to try.</summary>
    public static IReadOnlyList<string>? Of(ClothAnalysis cloth) => (long)cloth.Repeat.Ends * cloth.Repeat.Picks > MostCrossings
        ? null
        : [.. Words.Where(w => cloth.Symmetries.HasFlag(w.Symmetry)).Select(w => w.Words)];
}
