using System.Collections.Immutable;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Photographs.Threads;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Photographs;

/// <summary>Counts wraps of yarn on a rod beside a ruler: the count of one set of threads along the rod.</summary>
public static class WrapCounter
{
    // Wraps slant a little along the rod.
    private const double MostSlantDegrees = 7;
    private const double SlantStepDegrees = 7;
    private const double SpacingStep = 1.08;
    private const double LeastWraps = 8;
    private const double LeastPixels = 3;
    private const int EnoughWraps = 20;
    private const double ClearFit = 0.7;
    private const double HardlyFit = 0.45;
    private const double ClearLead = 0.12;

    // Between wraps that touch there is shadow; where the rod shows, light falls off or comes back far more.
    private const double MostShadow = 0.9;
    private const int Rows = 12;

    private static readonly Rule DiameterRule = new("diameter by wraps that touch", "1 ÷ wraps for a length", Source.CommonPractice);
    private static readonly Rule WrapRule = new("wraps counted gap by gap", "wraps ÷ length of rod", Source.Derivation);

    /// <summary>Counts the wraps along a band.</summary>
    /// <param name="photograph">The photograph.</param>
    /// <param name="scale">How large things are in it.</param>
    /// <param name="band">The band along the rod.</param>
    /// <returns>The count, or the problem: the band reaches out of the picture, or is too short.</returns>
    public static Parsed<WrapCount> Count(Photograph photograph, PhotoScale scale, PhotoBand band)
    {
        ArgumentNullException.ThrowIfNull(photograph);
        ArgumentNullException.ThrowIfNull(scale);
        (ClothPoint from, ClothPoint to) = (scale.Mapping.ToCloth(band.From), scale.Mapping.ToCloth(band.To));
        (double dx, double dy) = (to.XMillimetres - from.XMillimetres, to.YMillimetres - from.YMillimetres);
        double length = Math.Sqrt(dx * dx + dy * dy);
        var middle = new ClothPoint((from.XMillimetres + to.XMillimetres) / 2, (from.YMillimetres + to.YMillimetres) / 2);
        double pixels = scale.Mapping.PixelsPerMillimetreAt(scale.Mapping.ToPhoto(middle));
        if (!Inside(photograph, band.From) || !Inside(photograph, band.To) || length * pixels < LeastWraps * LeastPixels || !(band.DepthPixels >= 4))
        {
            return new InputProblem(
                $"A band from {band.From.X:0}, {band.From.Y:0} to {band.To.X:0}, {band.To.Y:0}, {band.DepthPixels:0} pixels wide, shows no wraps that could be counted.",
                "band",
                "Mark the first and the last wrap in the middle of the rod, inside the picture, and a band at least 4 pixels wide.");
        }

        double depth = band.DepthPixels / pixels;
        double axis = Math.Atan2(dy, dx);
        List<(double PerMillimetre, double Angle, StripReading Strip)> tried = Tried(photograph, scale, middle, axis, length, depth, pixels);
        (double PerMillimetre, double Angle, StripReading Strip) best = tried.MaxBy(t => t.Strip.Fit);
        double rival = tried.Where(t => Math.Abs(Math.Log(t.PerMillimetre / best.PerMillimetre)) > Math.Log(1.2)).Select(t => t.Strip.Fit).DefaultIfEmpty(0).Max();
        StripReading sharp = Read(photograph, scale, middle, best.Angle, length, depth, best.Strip.ByPhase);
        return Judged(sharp, sharp.Fit - rival, scale, length, pixels);
    }

    private static WrapCount Judged(StripReading strip, double lead, PhotoScale scale, double length, double pixels)
    {
        double wraps = strip.PerMillimetre * length;
        var questions = ImmutableArray.CreateBuilder<CountQuestion>();
        if (lead < ClearLead) questions.Add(new CountQuestion(CountQuestionKind.AnotherCount));
        if (wraps < EnoughWraps) questions.Add(new CountQuestion(CountQuestionKind.TooFew));
        if (pixels / strip.PerMillimetre < LeastPixels + 1) questions.Add(new CountQuestion(CountQuestionKind.TooFine));
        if (strip.Fit < HardlyFit) questions.Add(new CountQuestion(CountQuestionKind.NoThreads));
        bool touching = strip.LightSwing <= MostShadow;
        Certainty certainty = strip.Fit < HardlyFit || lead < ClearLead / 3 ? Certainty.CannotTell
            : questions.Count == 0 && strip.Fit >= ClearFit && touching ? Certainty.Sure : Certainty.FairlySure;
        Derived<Number> counted = Derived.Given("wraps counted", Number.FromValue(wraps), new Source(SourceKind.Measured, "counted in the photograph"), Math.Sqrt(1 / 6.0), formula: "gaps met along the rod");
        Length rod = Length.FromMillimetres(length);
        Derived<Length> along = Derived.Given("length of rod", rod, new Source(SourceKind.Measured, "marks on the photograph"), rod.Metres * scale.RelativeDeviation, "scale of the photograph", "pixels ÷ scale of the photograph");
        Derived<Sett> sett = Derived.From<Sett>("wraps for a length", WrapRule, counted, along, (n, metres) => n / metres);
        Derived<Length>? diameter = touching ? Derived.From<Length>("diameter by wraps", DiameterRule, sett, perMetre => 1 / perMetre) : null;
        return new WrapCount(sett, certainty, (int)Math.Round(wraps), touching, diameter, questions.ToImmutable(), [.. strip.Gaps[0].Select(scale.Mapping.ToPhoto)]);
    }

    private static List<(double PerMillimetre, double Angle, StripReading Strip)> Tried(Photograph photograph, PhotoScale scale, ClothPoint middle, double axis, double length, double depth, double pixels)
    {
        var tried = new List<(double, double, StripReading)>();
        for (double perMillimetre = LeastWraps / length; perMillimetre <= pixels / LeastPixels; perMillimetre *= SpacingStep)
        {
            for (double slant = -MostSlantDegrees; slant <= MostSlantDegrees; slant += SlantStepDegrees)
            {
                double angle = axis + slant * Math.PI / 180;
                tried.Add((perMillimetre, angle, Read(photograph, scale, middle, angle, length, depth, perMillimetre)));
            }
        }

        return tried;
    }

    private static StripReading Read(Photograph photograph, PhotoScale scale, ClothPoint middle, double angle, double length, double depth, double perMillimetre)
    {
        (double sin, double cos) = Math.SinCos(angle);
        return StripReader.ReadOne(photograph, scale.Mapping, middle, (cos, sin), length, depth, perMillimetre, Rows);
    }

    private static bool Inside(Photograph photograph, PhotoPoint place) =>
        place.X >= -1 && place.Y >= -1 && place.X <= photograph.Width + 1 && place.Y <= photograph.Height + 1;
}
