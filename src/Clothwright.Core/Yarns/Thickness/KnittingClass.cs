using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>One thickness class of hand-knitting yarn. Ranges of neighbours overlap; an open edge is null.</summary>
/// <param name="Number">0 (lace) to 7 (jumbo).</param>
/// <param name="Name">Name of the class, for example <c>Light</c>.</param>
/// <param name="StitchesPerFourInches">Stitches in 4 inches of stocking stitch.</param>
/// <param name="WrapsPerInch">Wraps in an inch, wound by hand.</param>
/// <param name="YardsPerPound">Grist in yards per pound; both edges null where none is in print.</param>
public sealed record KnittingClass(
    int Number,
    string Name,
    (double? Low, double? High) StitchesPerFourInches,
    (double? Low, double? High) WrapsPerInch,
    (double? Low, double? High) YardsPerPound)
{
    /// <inheritdoc />
    public override string ToString() => $"{Number} {Name}";
}
