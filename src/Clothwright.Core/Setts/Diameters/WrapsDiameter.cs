using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Setts.Diameters;

/// <summary>The diameter from wraps that were counted.</summary>
public static class WrapsDiameter
{
    /// <summary>Hand wraps as a share of the threads that touch: half the wraps divided by 0.7 is the plain weave maximum.</summary>
    public const double HandShare = 0.7;

    private static readonly Derived<Ratio> HandWrapping = Derived.Given(
        "hand wraps per touching thread",
        Ratio.FromValue(HandShare),
        Source.Published("Osterkamp, Weaving and Drafting Your Own Cloth, author's notes"),
        0.05,
        "how tightly the ruler is wrapped");

    /// <summary>Diameter with its working.</summary>
    /// <param name="wraps">Wraps per width.</param>
    /// <param name="measure">How they were counted.</param>
    /// <param name="label">What the diameter is called.</param>
    public static Derived<Length> Of(Derived<Sett> wraps, WrapMeasure measure, string label = YarnDiameter.PlainLabel) => measure == WrapMeasure.Geometric
        ? Derived.From<Length>(label, new Rule("measured wraps, geometric", "d = 1 ÷ wraps", Source.Measured), wraps, w => 1 / w)
        : Derived.From<Length>(
            label,
            new Rule("measured wraps, by hand", "d = 0.7 ÷ wraps", HandWrapping.Working.Rule.Source),
            wraps,
            HandWrapping,
            (w, share) => share / w);

    /// <summary>Wraps she would count by hand.</summary>
    /// <param name="diameter">Diameter of the yarn.</param>
    public static Derived<Sett> ByHand(Derived<Length> diameter) => Derived.From<Sett>(
        "wraps by hand",
        new Rule("wraps by hand", "0.7 ÷ diameter", HandWrapping.Working.Rule.Source),
        diameter,
        HandWrapping,
        (d, share) => share / d);
}
