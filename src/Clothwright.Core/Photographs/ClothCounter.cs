using Clothwright.Core.Photographs.Pictures;
using Clothwright.Core.Photographs.Spectra;
using Clothwright.Core.Photographs.Threads;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Photographs;

/// <summary>Counts ends and picks in a photograph of cloth.</summary>
/// <remarks>
/// Spectra of evened light and of the valleys between threads propose spacings; strips across the cloth are walked from gap to
/// gap for each; the weave between the two sets must fit both. What then stands clear of every rival is a count.
/// </remarks>
public static class ClothCounter
{
    private const int ThreadsDeep = 8;

    /// <summary>Counts both sets of threads.</summary>
    /// <param name="photograph">The photograph; the warp runs up it, give or take 15°.</param>
    /// <param name="scale">How large things are in it.</param>
    /// <param name="area">A square that shows only cloth.</param>
    /// <param name="detail">How much work is put in.</param>
    /// <returns>The counts, or the problem: the area lies outside the picture or holds too few pixels, or nothing stands out at all.</returns>
    public static Parsed<ClothCount> Count(Photograph photograph, PhotoScale scale, PhotoArea area, CountDetail detail)
    {
        ArgumentNullException.ThrowIfNull(photograph);
        ArgumentNullException.ThrowIfNull(scale);
        ArgumentNullException.ThrowIfNull(detail);
        if (AreaProblem(photograph, area) is { } problem) return problem;
        (ClothPoint middle, double side) = OnCloth(scale, area);
        var search = new RaySearch(photograph, scale.Mapping, middle, side, detail.Samples);
        var reader = new StripReader(photograph, scale.Mapping, middle, side, detail.StripRows);
        if (SetSearch.Find(search, reader) is not { } found)
        {
            return new InputProblem("No threads stand out in the photograph.", "photograph", "Take it again with light from the side, the swatch flat and the camera still, so near that a thread is 6 to 20 pixels wide.");
        }

        double pixels = scale.Mapping.PixelsPerMillimetreAt(area.Middle);
        ThreadSetCount across = Counted(found.Across, found.Down, reader, scale, detail, pixels, side, down: false);
        ThreadSetCount down = Counted(found.Down, found.Across, reader, scale, detail, pixels, side, down: true);
        return new ClothCount(across, down, area);
    }

    /// <summary>Counts one set of threads again at a spacing the weaver gives: doubled, halved or nudged after a look at the grid.</summary>
    /// <param name="photograph">The photograph.</param>
    /// <param name="scale">How large things are in it.</param>
    /// <param name="area">A square that shows only cloth.</param>
    /// <param name="detail">How much work is put in.</param>
    /// <param name="expected">Threads for a width, as the weaver sees them; the count settles near it.</param>
    /// <param name="angleDegrees">How far the direction in which they are counted is turned from the picture's axis.</param>
    /// <param name="picks">Whether picks are counted; else ends.</param>
    public static Parsed<ThreadSetCount> Recount(Photograph photograph, PhotoScale scale, PhotoArea area, CountDetail detail, Sett expected, double angleDegrees, bool picks)
    {
        ArgumentNullException.ThrowIfNull(photograph);
        ArgumentNullException.ThrowIfNull(scale);
        ArgumentNullException.ThrowIfNull(detail);
        if (AreaProblem(photograph, area) is { } problem) return problem;
        (ClothPoint middle, double side) = OnCloth(scale, area);
        double perMillimetre = expected.PerMetre / 1000;
        double pixels = scale.Mapping.PixelsPerMillimetreAt(area.Middle);
        if (perMillimetre * side < 4 || pixels / perMillimetre < 2)
        {
            return new InputProblem($"{expected} cannot be counted in this photograph.", "sett", "Give a count of which the picture shows at least four threads, each two pixels wide or more.");
        }

        var reader = new StripReader(photograph, scale.Mapping, middle, side, detail.StripRows);
        StripReading strips = reader.Read(perMillimetre, angleDegrees * Math.PI / 180, picks, ThreadsDeep / perMillimetre, detail.Strips);
        return SetJudgement.AsGiven(strips, scale, pixels, side, angleDegrees);
    }

    private static ThreadSetCount Counted(FoundSet found, FoundSet other, StripReader reader, PhotoScale scale, CountDetail detail, double pixels, double side, bool down)
    {
        ThreadCandidate best = found.Counted;
        StripReading strips = reader.Read(best.Strips.ByPhase, best.Ray.AngleRadians, down, ThreadsDeep / other.Best.Ray.PerMillimetre, detail.Strips);
        return SetJudgement.Of(found, strips, scale, pixels, side);
    }

    private static (ClothPoint Middle, double SideMillimetres) OnCloth(PhotoScale scale, PhotoArea area) =>
        (scale.Mapping.ToCloth(area.Middle), area.SidePixels / scale.Mapping.PixelsPerMillimetreAt(area.Middle));

    private static InputProblem? AreaProblem(Photograph photograph, PhotoArea area)
    {
        const double LeastPixels = 96;
        double half = area.SidePixels / 2;
        bool inside = area.Middle.X - half >= -1 && area.Middle.Y - half >= -1 && area.Middle.X + half <= photograph.Width + 1 && area.Middle.Y + half <= photograph.Height + 1;
        if (!inside)
        {
            return new InputProblem(
                $"The area of {area.SidePixels:0} pixels around {area.Middle.X:0}, {area.Middle.Y:0} reaches out of the picture of {photograph.Width} × {photograph.Height}.",
                "area",
                "Choose a square inside the picture, for example the middle half.");
        }

        return area.SidePixels >= LeastPixels
            ? null
            : new InputProblem($"The area is {area.SidePixels:0} pixels wide.", "area", $"Choose at least {LeastPixels:0} pixels, better 500.");
    }
}
