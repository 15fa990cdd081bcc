using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths;

/// <summary>The warp's share of the bending by each rule.</summary>
internal static class WarpShares
{
    private const string Label = "warp's share of the crimp height";

    // Spread: washed cloths lie between equal heights and equal crimps; on the loom tension varies from warp to warp.
    private static readonly Derived<Ratio> Washed = Derived.Given(
        Label, Ratio.FromValue(0.5), Source.CommonPractice, 0.07, "how warp and weft share the bending, washed", "one half: a relaxed cloth bends warp and weft alike");

    private static readonly Derived<Ratio> Stretched = Derived.Given(
        Label,
        Ratio.FromValue(1.0 / 3),
        Source.Published("Taylor's close plain example, p. 426-429, worked back through the geometry"),
        0.06,
        "how warp and weft share the bending, on the loom",
        "one third: the warp is stretched");

    internal static Derived<Ratio> Of(ClothQuestion question, ClothShape shape, Derived<Length> warp, Derived<Length> weft)
    {
        if (question.LearnedWarpShare is { } learned) return learned.Value;
        IReadOnlyList<IDerived> inputs = [warp, weft, question.Ends, question.Picks];
        switch (question.Sharing)
        {
            case CrimpSharing.OnLoom:
                return Stretched;
            case CrimpSharing.EqualCrimp:
                return Derived.From<Ratio>(
                    Label,
                    new Rule("equal crimp", "the height at which both crimps are equal, by halving", Source.Derivation),
                    inputs,
                    v => shape.At(v[0], v[1], v[2], v[3]) is var c ? c.HeightOfEqualCrimp() / c.Sum : 0);
            case CrimpSharing.BendingBalance:
                return Derived.From<Ratio>(
                    Label,
                    new Rule("bending balance", "h1 ÷ h2 = (T2 ÷ T1) (M2 p2 ÷ M1 p1)³", Source.FromMemoryOf("Hearle, Grosberg & Backer; Olofsson 1964; Leaf & Kandil 1980")),
                    [.. inputs, question.Warp.MeanLinearDensity(), question.Weft.MeanLinearDensity()],
                    v => shape.At(v[0], v[1], v[2], v[3]) is var c ? c.HeightOfBendingBalance(v[5] / v[4]) / c.Sum : 0);
            case CrimpSharing.MeasuredWarpCrimp:
                return Derived.From<Ratio>(
                    Label,
                    new Rule("measured warp crimp", "the height at which the warp crimps as measured, by halving", Source.Derivation),
                    [.. inputs, question.MeasuredWarpCrimp!],
                    v => shape.At(v[0], v[1], v[2], v[3]) is var c ? c.HeightOfWarpCrimp(v[4]) / c.Sum : 0);
            default:
                return Washed;
        }
    }
}
