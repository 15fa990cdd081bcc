using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Cloths.Geometry;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Limits;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths;

public sealed partial record ClothGeometry
{
    private static readonly Source Peirce = Source.Published("Balasubramanian, Fabric geometry (lecture notes), after Peirce 1937; floats from memory of Behera & Hari and Love 1954");

    /// <summary>Describes a cloth.</summary>
    /// <param name="question">Yarns, weave, setts and how the bending is shared.</param>
    /// <exception cref="InputProblemException">The question cannot be answered: no yarn, or a weave that does not interlace.</exception>
    public static ClothGeometry Of(ClothQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        if (question.Problem() is { } problem) throw new InputProblemException(problem);
        WeaveCounts counts = WeaveCounts.Of(question.Weave);
        if (counts.WarpTransitions == 0 || counts.WeftTransitions == 0)
        {
            throw new InputProblemException(new InputProblem(
                "Warp and weft do not interlace anywhere, so they make no cloth.", "weave", "Use a weave in which ends and picks change face, for example plain."));
        }

        Derived<Length> warp = question.Warp.MeanDiameter();
        Derived<Length> weft = question.Weft.MeanDiameter();
        var shape = new ClothShape(counts.MeanEndFloat, counts.MeanPickFloat, question.WarpFlattening.Value, question.WeftFlattening.Value);
        Derived<Ratio> share = WarpShares.Of(question, shape, warp, weft);
        IReadOnlyList<IDerived> inputs = [warp, weft, question.Ends, question.Picks, share];
        WeaveGeometry cloth = shape.At(warp.Value.Metres, weft.Value.Metres, question.Ends.Value.PerMetre, question.Picks.Value.PerMetre);
        double height = cloth.WarpHeight(share.Value.Value);

        Derived<Ratio> warpCrimp = Crimp("warp crimp", counts.MeanPickFloat, c => c.Cloth.WarpCrimp(c.Height));
        Derived<Ratio> weftCrimp = Crimp("weft crimp", counts.MeanEndFloat, c => c.Cloth.WeftCrimp(c.Cloth.Sum - c.Height));
        Derived<Ratio> warpCover = Cover1("warp cover", warp, question.Ends, question.WarpFlattening.Value);
        Derived<Ratio> weftCover = Cover1("weft cover", weft, question.Picks, question.WeftFlattening.Value);
        return new ClothGeometry
        {
            Question = question,
            Counts = counts,
            WarpDiameter = warp,
            WeftDiameter = weft,
            WarpShare = share,
            WarpCrimp = warpCrimp,
            WeftCrimp = weftCrimp,
            WarpTakeUp = question.LearnedWarpTakeUp?.NextPiece ?? TakeUp("warp take-up", warpCrimp),
            WeftTakeUp = question.LearnedWeftTakeUp?.NextPiece ?? TakeUp("weft take-up", weftCrimp),
            Thickness = Derived.From<Length>(
                "thickness",
                new Rule("cloth thickness", "larger of warp diameter + its crimp height and weft diameter + its crimp height", Source.FromMemoryOf("Peirce 1937")),
                inputs,
                v => shape.At(v) is var (c, h) ? c.Thickness(h) : 0),
            Mass = MassOf(question, warpCrimp, weftCrimp),
            WarpCover = warpCover,
            WeftCover = weftCover,
            Cover = Derived.From<Ratio>("cover", new Rule("cloth cover", "C1 + C2 − C1 C2", Source.Published("GATE Textile 2007")), warpCover, weftCover, (c1, c2) => c1 + c2 - c1 * c2),
            Tightness = Derived.From<Ratio>(
                "tightness",
                new Rule("tightness", "spacing at which the cloth jams ÷ its spacing, warp and weft drawn together alike", Source.FromMemoryOf("Seyam & El-Shiekh 1993 (tightness as a share of the jam)")),
                [warp, weft, question.Ends, question.Picks],
                v => PeirceJam.Tightness(v[0], v[1], counts.MeanEndFloat, counts.MeanPickFloat, 1 / v[2], 1 / v[3])),
            IsJammed = cloth.IsJammed,
            CrimpPerEnd = PerThread(counts.TransitionsPerEnd, counts.Picks, m => (cloth with { PickFloat = m }).WarpCrimp(height)),
            CrimpPerPick = PerThread(counts.TransitionsPerPick, counts.Ends, m => (cloth with { EndFloat = m }).WeftCrimp(cloth.Sum - height)),
        };

        Derived<Ratio> Crimp(string label, double meanFloat, Func<(WeaveGeometry Cloth, double Height), double> crimp) => Derived.From<Ratio>(
            label,
            new Rule("Peirce's geometry with straight floats", $"(yarn between crossings − crossing pitch) ÷ ({meanFloat.ToString("0.###", CultureInfo.InvariantCulture)} × spacing)", Peirce),
            inputs,
            v => crimp(shape.At(v)));
    }

    private static Derived<Ratio> TakeUp(string label, Derived<Ratio> crimp) =>
        Derived.From<Ratio>(label, new Rule("take-up", "crimp ÷ (1 + crimp)", Source.Definition), crimp, c => c / (1 + c));

    private static Derived<Ratio> Cover1(string label, Derived<Length> diameter, Derived<Sett> sett, double flattening)
    {
        double width = ThreadSection.FromFlattening(1, flattening).Width;
        return Derived.From<Ratio>(
            label,
            new Rule("cover", "thread width × threads per width, at most 1", Source.Published("GATE Textile 2007")),
            diameter,
            sett,
            (d, n) => Math.Min(1, d * width * n));
    }

    private static Derived<ArealDensity> MassOf(ClothQuestion question, Derived<Ratio> warpCrimp, Derived<Ratio> weftCrimp) => Derived.From<ArealDensity>(
        "mass of the cloth",
        new Rule("mass per area", "ends × warp tex × (1 + warp crimp) + picks × weft tex × (1 + weft crimp)", Source.Published("GATE Textile 2009")),
        [question.Ends, question.Warp.MeanLinearDensity(), warpCrimp, question.Picks, question.Weft.MeanLinearDensity(), weftCrimp],
        v => MassPerArea.GramsPerSquareMetre(v[0] / 100, v[1], v[2], v[3] / 100, v[4], v[5]));

    // A thread's mean float from its own changes of face; one that never changes face lies straight.
    private static ImmutableArray<double> PerThread(ImmutableArray<int> changes, int across, Func<double, double> crimp)
    {
        var known = new Dictionary<int, double> { [0] = 0 };
        var crimps = ImmutableArray.CreateBuilder<double>(changes.Length);
        foreach (int count in changes)
        {
            if (!known.TryGetValue(count, out double value)) known[count] = value = crimp((double)across / count);
            crimps.Add(value);
        }

        return crimps.MoveToImmutable();
    }
}
