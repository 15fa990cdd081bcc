using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Colours;
using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Photographs.Palettes;

/// <summary>Tells the colours of a photograph of a cone, a skein or a piece of cloth.</summary>
public static class PaletteReader
{
    private const double LeastSide = 16;
    private const double MostLost = 0.6;
    private const double WorthSaying = 0.1;
    private const double Blurred = 0.25;
    private const double LeastShare = 0.01;
    private const double PatchShare = 0.02;
    private const double DarkPatch = 0.02;
    private const double ColouredPatch = 4;

    /// <summary>Tells the colours.</summary>
    /// <param name="photo">The photograph.</param>
    /// <param name="question">Where to look, and where it is neutral.</param>
    /// <returns>The colours, or why none can be told: burnt out, too dark, blurred, a spot that is no neutral one.</returns>
    public static Parsed<PhotoPalette> Read(Photograph photo, PaletteQuestion question)
    {
        ArgumentNullException.ThrowIfNull(photo);
        ArgumentNullException.ThrowIfNull(question);
        (PhotoPoint a, PhotoPoint b) = question.Area ?? (new PhotoPoint(0, 0), new PhotoPoint(photo.Width, photo.Height));
        var from = new PhotoPoint(Math.Max(0, Math.Min(a.X, b.X)), Math.Max(0, Math.Min(a.Y, b.Y)));
        var to = new PhotoPoint(Math.Min(photo.Width, Math.Max(a.X, b.X)), Math.Min(photo.Height, Math.Max(a.Y, b.Y)));
        if (to.X - from.X < LeastSide || to.Y - from.Y < LeastSide)
        {
            return new InputProblem("The part to look at is too small, or beside the picture.", "area", "Give two opposite corners at least 16 pixels apart each way, inside the picture.");
        }

        Parsed<LightCorrection> correction = Correction(photo, question);
        if (!correction.TryGet(out LightCorrection light)) return correction.Problem!;
        PaletteGrid grid = PaletteGrid.Of(photo, from, to);
        return Problem(grid) is { } problem ? problem : Palette(grid, light, Math.Clamp(question.Most, 1, PaletteQuestion.MostColours));
    }

    private static Parsed<LightCorrection> Correction(Photograph photo, PaletteQuestion question)
    {
        if (question.NeutralPlace is not { } place) return LightCorrection.None;
        if (place.X < 0 || place.Y < 0 || place.X >= photo.Width || place.Y >= photo.Height)
        {
            return new InputProblem("The neutral spot lies beside the picture.", "neutral", "Give a place inside the picture, x,y in pixels.");
        }

        LinearColour spot = photo.LightAt(place, Math.Max(4, PatchShare * Math.Min(photo.Width, photo.Height)));
        double least = Math.Min(spot.Red, Math.Min(spot.Green, spot.Blue));
        double most = Math.Max(spot.Red, Math.Max(spot.Green, spot.Blue));
        if (PaletteGrid.IsBurnt(spot)) return new InputProblem("The neutral spot is burnt out: nothing can be told of the light by it.", "neutral", "Take the photograph with less light, or point at a grey spot.");
        if (least < DarkPatch) return new InputProblem("The neutral spot is too dark.", "neutral", "Point at the middle of the white paper or the grey card, out of the shadow.");
        if (most > ColouredPatch * least) return new InputProblem($"The spot is {ColourWords.Of(spot)}, which no light of a room makes of white or grey.", "neutral", "Point at the middle of the white paper or the grey card.");
        return LightCorrection.FromNeutral(spot, question.NeutralReflectanceShare);
    }

    private static InputProblem? Problem(PaletteGrid grid)
    {
        if (grid.BurntShare > MostLost) return new InputProblem($"{Percent(grid.BurntShare)} of what is looked at is burnt out: its colour is not in the picture.", "photo", "Take it with less light, out of the sun, or point at a part that is not burnt out with area.");
        if (grid.DarkShare > MostLost) return new InputProblem($"{Percent(grid.DarkShare)} of what is looked at is too dark to tell its colour.", "photo", "Take it in daylight, near a window, or point at a lighter part with area.");
        if (grid.BurntShare + grid.DarkShare > MostLost) return new InputProblem("Most of what is looked at is burnt out or too dark.", "photo", "Take it in even light, without sun and shadow.");
        return grid.EdgeSharpness < Blurred
            ? new InputProblem("The picture is blurred: colours run into each other, and their mixtures would be told as colours.", "photo", "Hold the camera still and let it focus, or point at a part of one colour with area.")
            : null;
    }

    private static PhotoPalette Palette(PaletteGrid grid, LightCorrection correction, int most)
    {
        // Squares across an edge hold a mixture: where enough others are there, they make no colours, and each of its two colours has its share of them.
        (LinearColour Light, double Weight, bool IsEven)[] cells = [.. grid.Cells.Select(c => (correction.Of(c.Light), (double)c.Told, c.IsEven))];
        bool enoughEven = cells.Count(c => c.IsEven) >= 0.4 * cells.Length;
        List<LinearColour> middles = ColourGroups.Of([.. cells.Where(c => c.IsEven || !enoughEven).Select(c => (c.Light, c.Weight))]);
        double told = cells.Sum(c => c.Weight);
        OkLab[] labs = [.. middles.Select(OkLab.From)];
        double[] weights = new double[labs.Length];
        var own = new List<(LinearColour Light, double Weight)>[labs.Length];
        for (int m = 0; m < own.Length; m++) own[m] = [];
        foreach ((LinearColour light, double weight, bool isEven) in cells)
        {
            if (isEven || !enoughEven)
            {
                OkLab lab = OkLab.From(light);
                int nearest = Enumerable.Range(0, labs.Length).MinBy(m => labs[m].DistanceTo(lab));
                weights[nearest] += weight;
                own[nearest].Add((light, weight));
                continue;
            }

            (int first, int second, double share) = ColourMixture.Of(light, middles);
            weights[first] += weight * (1 - share);
            weights[second] += weight * share;
        }

        PaletteColour[] all = [.. middles.Select((m, i) => new PaletteColour(m, weights[i] / told, Spread([.. own[i]], m))).Where(c => c.AreaShare > 0).OrderByDescending(c => c.AreaShare)];
        ImmutableArray<PaletteColour> colours = [.. all.Where((c, i) => i == 0 || c.AreaShare >= LeastShare).Take(most)];
        return new PhotoPalette
        {
            Colours = colours,
            Correction = correction,
            BurntShare = grid.BurntShare,
            DarkShare = grid.DarkShare,
            Notes = [.. Notes(grid, correction, colours, all)],
        };
    }

    private static double Spread((LinearColour Light, double Weight)[] lights, LinearColour middle)
    {
        if (lights.Length == 0) return 0;
        CieLab lab = CieLab.From(middle);
        double squares = lights.Sum(l => Math.Pow(ColourDifference.Ciede2000(CieLab.From(l.Light), lab), 2) * l.Weight);
        return Math.Sqrt(squares / lights.Sum(l => l.Weight));
    }

    private static IEnumerable<string> Notes(PaletteGrid grid, LightCorrection correction, ImmutableArray<PaletteColour> colours, PaletteColour[] all)
    {
        if (correction == LightCorrection.None) yield return "No white or grey spot was pointed at: the colours are those of the light as much as of the yarn.";
        if (grid.BurntShare > WorthSaying) yield return $"{Percent(grid.BurntShare)} is burnt out and was left aside.";
        if (grid.DarkShare > WorthSaying) yield return $"{Percent(grid.DarkShare)} is too dark to tell and was left aside.";
        if (colours.Any(c => c.Light.Red > 1 || c.Light.Green > 1 || c.Light.Blue > 1)) yield return "A colour came out lighter than white; it is cut off at white. Was the spot in the shadow?";
        double left = all.Sum(c => c.AreaShare) - colours.Sum(c => c.AreaShare);
        if (left > LeastShare) yield return $"{Percent(left)} lies in further colours.";
    }

    private static string Percent(double share) => $"{(share * 100).ToString("0", CultureInfo.InvariantCulture)} %";
}
