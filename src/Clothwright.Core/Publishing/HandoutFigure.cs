using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Publishing;

/// <summary>One figure of a handout.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Metric">The figure in metric units.</param>
/// <param name="Customary">The figure in customary units; the same text where units do not matter.</param>
public sealed record HandoutFigure(string Label, string Metric, string Customary)
{
    /// <summary>A word on the figure, for example <c>includes 2 floating selvedges</c>; empty if there is none.</summary>
    public string Note { get; init; } = "";

    /// <summary>The figure as it stands in its working.</summary>
    /// <param name="label">What it is called on the page.</param>
    /// <param name="figure">The number with its working.</param>
    public static HandoutFigure Of(string label, IDerived figure) =>
        new(label, figure.Working.Format(UnitStyle.Metric), figure.Working.Format(UnitStyle.Customary));
}
