using System.Collections.Immutable;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Photographs.Threads;

/// <summary>Judges how far a count can be trusted, and what is to be asked.</summary>
/// <remarks>The bounds were set on the synthetic swatches of the tests, so that none of them is wrong and called sure.</remarks>
internal static class SetJudgement
{
    private const double ClearMargin = 0.16;
    private const double HardlyMargin = 0.05;
    private const double ClearFit = 0.65;
    private const double HardlyFit = 0.35;

    // One colour of cloth varies by shadow alone; more than this is two colours, or a dark thread taken for a gap.
    private const double MostShadow = 0.75;
    private const double MostHue = 0.3;
    private const double MostPairing = 0.35;
    private const double MostSpread = 0.03;
    private const double MostDisagreement = 0.01;
    private const double MostSlant = 0.06;
    private const double LeastPixels = 4;
    private const int LeastThreads = 25;
    private const double MostTurnDegrees = 13;

    private static readonly Rule CountRule = new("threads counted gap by gap", "threads between the outer gaps ÷ width between them", Source.Derivation);
    private static readonly Source FromPhoto = new(SourceKind.Measured, "counted in the photograph, strip by strip");
    private static readonly Source FromMarks = new(SourceKind.Measured, "marks on the photograph");

    /// <summary>The count of a set that was searched for.</summary>
    public static ThreadSetCount Of(FoundSet found, StripReading strips, PhotoScale scale, double pixelsPerMillimetre, double sideMillimetres)
    {
        double times = found.ByTwos ? 2 : 1;
        double perMillimetre = strips.PerMillimetre * times;
        double turn = found.Best.Ray.AngleRadians * 180 / Math.PI;
        double spread = (strips.CountedPerMillimetre.Max() - strips.CountedPerMillimetre.Min()) / strips.PerMillimetre;
        int seen = (int)Math.Round(perMillimetre * sideMillimetres);
        double disagreement = Math.Abs(strips.ByPhase / strips.PerMillimetre - 1);
        bool colours = strips.LightSwing > MostShadow || strips.HueSwing > MostHue;
        var questions = ImmutableArray.CreateBuilder<CountQuestion>();
        if (found.ByTwos) questions.Add(new(CountQuestionKind.EverySecondGap, Sett.FromPerMetre(perMillimetre * 500)));
        else if (colours) questions.Add(new(CountQuestionKind.ColoursInTurn, Sett.FromPerMetre(perMillimetre * 2000)));
        if (found.Margin < ClearMargin && found.Rival is { } rival) questions.Add(new(CountQuestionKind.AnotherCount, Sett.FromPerMetre(rival.Strips.PerMillimetre * 1000)));
        if (pixelsPerMillimetre / perMillimetre < LeastPixels) questions.Add(new(CountQuestionKind.TooFine));
        if (seen < LeastThreads) questions.Add(new(CountQuestionKind.TooFew));
        if (strips.Fit < HardlyFit && !found.ByTwos) questions.Add(new(CountQuestionKind.NoThreads));
        if (!scale.KnowsPlane && strips.Slant > MostSlant) questions.Add(new(CountQuestionKind.Slanted));
        if (spread > MostSpread) questions.Add(new(CountQuestionKind.Uneven));
        if (Math.Abs(turn) > MostTurnDegrees) questions.Add(new(CountQuestionKind.Turned));
        bool hardly = found.Margin < HardlyMargin || (strips.Fit < HardlyFit && !found.ByTwos);
        bool clear = questions.Count == 0 && strips.Fit >= ClearFit && strips.PairStrength <= MostPairing && disagreement <= MostDisagreement;
        return Result(strips, times, scale, sideMillimetres, turn, found.Margin, questions.ToImmutable(), hardly ? Certainty.CannotTell : clear ? Certainty.Sure : Certainty.FairlySure);
    }

    /// <summary>The count of a set whose spacing the weaver gave: as sure as she is that the grid lies on every thread, so never called sure.</summary>
    public static ThreadSetCount AsGiven(StripReading strips, PhotoScale scale, double pixelsPerMillimetre, double sideMillimetres, double angleDegrees)
    {
        ImmutableArray<CountQuestion> questions = pixelsPerMillimetre / strips.PerMillimetre < LeastPixels ? [new(CountQuestionKind.TooFine)] : [];
        return Result(strips, 1, scale, sideMillimetres, angleDegrees, 1, questions, strips.Strength < HardlyFit ? Certainty.CannotTell : Certainty.FairlySure);
    }

    private static ThreadSetCount Result(StripReading strips, double times, PhotoScale scale, double sideMillimetres, double turn, double margin, ImmutableArray<CountQuestion> questions, Certainty certainty)
    {
        double perMillimetre = strips.PerMillimetre * times;
        double threads = perMillimetre * sideMillimetres;
        double mean = strips.CountedPerMillimetre.Average();
        double variance = strips.CountedPerMillimetre.Sum(c => (c - mean) * (c - mean)) / Math.Max(1, strips.CountedPerMillimetre.Length - 1);
        // Half a thread at each end of a strip may be missed, besides what the strips differ by.
        double deviation = threads * Math.Sqrt(variance / strips.CountedPerMillimetre.Length) / mean;
        deviation = Math.Sqrt(deviation * deviation + 1 / 6.0);
        Derived<Number> counted = Derived.Given("threads counted", Number.FromValue(threads), FromPhoto, deviation, formula: $"middle of {strips.CountedPerMillimetre.Length} strips");
        Length width = Length.FromMillimetres(sideMillimetres);
        Derived<Length> across = Derived.Given("width they cover", width, FromMarks, width.Metres * scale.RelativeDeviation, "scale of the photograph", "pixels ÷ scale of the photograph");
        return new ThreadSetCount
        {
            Sett = Derived.From<Sett>("threads for a width", CountRule, counted, across, (n, metres) => n / metres),
            Certainty = certainty,
            AngleDegrees = turn,
            SpreadFraction = (strips.CountedPerMillimetre.Max() - strips.CountedPerMillimetre.Min()) / strips.PerMillimetre,
            Strength = strips.Strength,
            ThreadsSeen = (int)Math.Round(threads),
            Margin = margin,
            Questions = questions,
            Gaps = [.. strips.Gaps.Select(strip => Lines(strip, times > 1, scale))],
        };
    }

    private static ImmutableArray<PhotoPoint> Lines(ClothPoint[] strip, bool byTwos, PhotoScale scale)
    {
        var points = ImmutableArray.CreateBuilder<PhotoPoint>();
        for (int i = 0; i < strip.Length; i++)
        {
            PhotoPoint here = scale.Mapping.ToPhoto(strip[i]);
            if (byTwos && i > 0)
            {
                PhotoPoint before = points[^1];
                points.Add(new PhotoPoint((before.X + here.X) / 2, (before.Y + here.Y) / 2));
            }

            points.Add(here);
        }

        return points.ToImmutable();
    }
}
