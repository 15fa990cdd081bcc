using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Lengths;

/// <summary>Warp that a fringe needs beyond its finished length.</summary>
public static class FringeAllowance
{
    private static readonly Derived<Ratio> TwistTakeUp = Derived.FromRange(
        "shortening by twisting", Ratio.FromPercent(10), Ratio.FromPercent(20), Source.CommonPractice);

    private static readonly Derived<Length> Knot = Derived.FromRange(
        "warp in a knot and the trimmed end", Length.FromCentimetres(2), Length.FromCentimetres(4), Source.CommonPractice);

    private static readonly Derived<Length> Trim = Derived.FromRange(
        "warp trimmed from the fringe", Length.FromCentimetres(0.5), Length.FromCentimetres(1.5), Source.CommonPractice);

    private static readonly Rule Loose = new("loose fringe", "warp = finished fringe + trimming", Source.CommonPractice);
    private static readonly Rule Twisted = new("twisted fringe", "warp = finished fringe ÷ (1 − shortening by twisting) + knot", Source.CommonPractice);
    private static readonly Rule Knotted = new("knotted fringe", "warp = finished fringe + knot", Source.CommonPractice);

    /// <summary>Warp that one fringe needs.</summary>
    /// <param name="style">How it is made; not <see cref="FringeStyle.None"/>.</param>
    /// <param name="finished">Its length when done.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="style"/> is no fringe.</exception>
    public static Derived<Length> WarpFor(FringeStyle style, Derived<Length> finished) => style switch
    {
        FringeStyle.Loose => Derived.From<Length>("warp in a fringe", Loose, finished, Trim, (f, trim) => f + trim),
        FringeStyle.Twisted => Derived.From<Length>("warp in a fringe", Twisted, finished, TwistTakeUp, Knot, (f, twist, knot) => f / (1 - twist) + knot),
        FringeStyle.Knotted => Derived.From<Length>("warp in a fringe", Knotted, finished, Knot, (f, knot) => f + knot),
        _ => throw new ArgumentOutOfRangeException(nameof(style), style, "A fringe is loose, twisted or knotted."),
    };

    /// <summary>Warp of one fringe that is cut away when it is done.</summary>
    /// <param name="style">How it is made; not <see cref="FringeStyle.None"/>.</param>
    /// <remarks>A knot stays; a third of its allowance is the end trimmed below it.</remarks>
    public static Derived<Length> Trimmed(FringeStyle style) => style == FringeStyle.Loose
        ? Trim
        : Derived.From<Length>("warp trimmed below the knot", KnotTrim, Knot, k => k / 3);

    private static readonly Rule KnotTrim = new("trimming below a knot", "trimmed = a third of the warp allowed for the knot", Source.CommonPractice);
}
