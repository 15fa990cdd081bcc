using Clothwright.Core.Calibration;
using Clothwright.Core.Cloths.Geometry;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Cloths.Stages;

public sealed partial record ClothStages
{
    // A washed cloth cannot be drawn past its jam; yet some shrinkage is in the yarn itself and always comes.
    private const double ShrinkageOfYarnItself = 0.25;

    /// <summary>Follows a cloth from the reed to the washed piece.</summary>
    /// <param name="question">Yarns, weave, sett in the reed, picks and finish.</param>
    /// <exception cref="InputProblemException">The cloth cannot be described: no yarn, or a weave that does not interlace.</exception>
    public static ClothStages Of(StagesQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        ClothGeometry onLoom = ClothGeometry.Of(State(question, question.EndsInReed, question.Picks) with { Sharing = CrimpSharing.OnLoom });
        Derived<Ratio> weftTakeUp = ForeseenTakeUp.Weft(onLoom);
        Derived<Ratio> drawIn = question.LearnedDrawIn?.NextPiece ?? DrawInOf(weftTakeUp);
        Derived<Sett> wovenEnds = Closed("ends off the loom", question.EndsInReed, drawIn);
        ClothGeometry offLoom = ClothGeometry.Of(State(question, wovenEnds, question.Picks) with { LearnedWarpTakeUp = question.LearnedWarpTakeUp });

        bool fulled = question.ToBeFulled && WashingShrinkage.Felts(question.Warp) && WashingShrinkage.Felts(question.Weft);
        Derived<Ratio> length = Shrinkage(question.LearnedLengthShrinkage, "shrinkage in length", question.Warp, offLoom, fulled);
        Derived<Ratio> width = Shrinkage(question.LearnedWidthShrinkage, "shrinkage in width", question.Weft, offLoom, fulled);
        if (!fulled)
        {
            double room = RoomBeforeJam(offLoom, length.Value.Value, width.Value.Value);
            if (question.LearnedLengthShrinkage is null) length = Capped(length, room);
            if (question.LearnedWidthShrinkage is null) width = Capped(width, room);
        }

        ClothGeometry washed = ClothGeometry.Of(State(
            question, Closed("ends in the washed cloth", wovenEnds, width), Closed("picks in the washed cloth", question.Picks, length)));
        Derived<Ratio> warpTakeUp = question.LearnedWarpTakeUp?.NextPiece ?? ForeseenTakeUp.Warp(offLoom);
        Derived<ArealDensity> offLoomMass = MassOf(offLoom, warpTakeUp, weftTakeUp);
        return new ClothStages
        {
            Question = question,
            OnLoom = onLoom,
            OffLoom = offLoom,
            Washed = washed,
            WarpTakeUp = warpTakeUp,
            WeftTakeUp = weftTakeUp,
            DrawIn = drawIn,
            LengthShrinkage = length,
            WidthShrinkage = width,
            OffLoomMass = offLoomMass,
            WashedMass = Derived.From<ArealDensity>(
                "mass of the washed cloth",
                new Rule("mass on a smaller area", "mass off the loom ÷ ((1 − shrinkage in length) (1 − shrinkage in width))", Source.Derivation),
                offLoomMass,
                length,
                width,
                (mass, s1, s2) => mass / ((1 - s1) * (1 - s2))),
        };
    }

    private static ClothQuestion State(StagesQuestion question, Derived<Sett> ends, Derived<Sett> picks) => new()
    {
        Warp = question.Warp,
        Weft = question.Weft,
        Weave = question.Weave,
        Ends = ends,
        Picks = picks,
    };

    private static Derived<ArealDensity> MassOf(ClothGeometry cloth, Derived<Ratio> warpTakeUp, Derived<Ratio> weftTakeUp) => Derived.From<ArealDensity>(
        "mass of the cloth off the loom",
        new Rule("mass per area by take-up", "ends × warp tex ÷ (1 − warp take-up) + picks × weft tex ÷ (1 − weft take-up)", Source.Derivation),
        [
            cloth.Question.Ends, cloth.Question.Warp.MeanLinearDensity(), warpTakeUp,
            cloth.Question.Picks, cloth.Question.Weft.MeanLinearDensity(), weftTakeUp,
        ],
        v => MassPerArea.GramsPerSquareMetre(v[0] / 100, v[1], v[2] / (1 - v[2]), v[3] / 100, v[4], v[5] / (1 - v[5])));

    private static Derived<Ratio> DrawInOf(Derived<Ratio> weftTakeUp)
    {
        Derived<Number> laid = Derived.Given(
            "how the weft is laid", Number.FromValue(1), Source.CommonPractice, 0.2, "how the weft is laid", "1: each pick as long as the reed is wide; an arc or bubble makes it less");
        return Derived.From<Ratio>(
            "draw-in",
            new Rule("draw-in", "weft take-up on the loom × how the weft is laid", Source.Derivation),
            weftTakeUp,
            laid,
            (takeUp, share) => Math.Min(0.6, takeUp * share));
    }

    private static Derived<Ratio> Shrinkage(LearnedValue? learned, string label, Setts.ThreadSystem threads, ClothGeometry offLoom, bool fulled)
    {
        if (learned is not null) return learned.NextPiece;
        return fulled ? WashingShrinkage.Fulled : WashingShrinkage.InCloth(WashingShrinkage.OfFibres(threads, label), offLoom.Tightness, label);
    }

    private static Derived<Sett> Closed(string label, Derived<Sett> sett, Derived<Ratio> loss) => Derived.From<Sett>(
        label, new Rule("threads on a smaller width", "threads ÷ (1 − loss)", Source.Derivation), sett, loss, (n, w) => n / (1 - w));

    private static Derived<Ratio> Capped(Derived<Ratio> shrinkage, double room) => room >= 1 ? shrinkage : Derived.From<Ratio>(
        shrinkage.Working.Label,
        new Rule("no closer than the jam", $"shrinkage × {room.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture)}: further the threads cannot draw together", Source.Derivation),
        shrinkage,
        s => s * room);

    // The share of the shrinkage after which the cloth is jammed.
    private static double RoomBeforeJam(ClothGeometry offLoom, double length, double width)
    {
        for (double share = 1; share > ShrinkageOfYarnItself; share -= 0.05)
        {
            double ends = offLoom.Question.Ends.Value.PerMetre / (1 - share * width);
            double picks = offLoom.Question.Picks.Value.PerMetre / (1 - share * length);
            double tightness = Setts.Limits.PeirceJam.Tightness(
                offLoom.WarpDiameter.Value.Metres, offLoom.WeftDiameter.Value.Metres,
                offLoom.Counts.MeanEndFloat, offLoom.Counts.MeanPickFloat, 1 / ends, 1 / picks);
            if (tightness <= 1) return share;
        }

        return ShrinkageOfYarnItself;
    }
}
