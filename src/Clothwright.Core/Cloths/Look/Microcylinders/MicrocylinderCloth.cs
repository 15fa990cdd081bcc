using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Colours;

namespace Clothwright.Core.Cloths.Look.Microcylinders;

/// <summary>A cloth of two sets of fine cylinders seen from afar (I. Sadeghi et al., ACM Transactions on Graphics 32(2), 2013).</summary>
/// <param name="Warp">The set along the cloth.</param>
/// <param name="Weft">The set across it.</param>
public sealed record MicrocylinderCloth(MicrocylinderThread Warp, MicrocylinderThread Weft)
{
    /// <summary>Plain linen, from the measured fits of the paper.</summary>
    public static MicrocylinderCloth PlainLinen { get; } = new(
        new(1.46, new LinearColour(0.2, 0.8, 1) * 0.3, 0.3, 12, 24, 0.33, [-25, 25]),
        new(1.46, new LinearColour(0.2, 0.8, 1) * 0.3, 0.3, 12, 24, 0.33, [-25, 25]));

    /// <summary>Crêpe de chine, from the measured fits of the paper.</summary>
    public static MicrocylinderCloth CrepeDeChine { get; } = new(
        new(1.345, new LinearColour(1, 0.95, 0.05) * 0.12, 0.2, 5, 10, 0.75, [-35, -35, 35, 35]),
        new(1.345, new LinearColour(1, 0.95, 0.05) * 0.16, 0.3, 18, 32, 0.25, [0]));

    /// <summary>Shot silk, from the measured fits of the paper.</summary>
    public static MicrocylinderCloth ShotSilk { get; } = new(
        new(1.345, new LinearColour(0.1, 1, 0.4) * 0.2, 0.1, 4, 8, 0.86, [-25, -25, 25, 25]),
        new(1.345, new LinearColour(1, 0, 0.1) * 0.6, 0.1, 5, 10, 0.14, [0]));

    /// <summary>Light sent to the eye of a lamp of strength 1.</summary>
    /// <param name="light">Towards the lamp, 1 long.</param>
    /// <param name="view">Towards the eye, 1 long.</param>
    public LinearColour At(Direction light, Direction view)
    {
        (LinearColour Light, double Weight) warp = Set(Warp, new Direction(0, 1, 0), light, view);
        (LinearColour Light, double Weight) weft = Set(Weft, new Direction(1, 0, 0), light, view);
        double whole = warp.Weight + weft.Weight + Math.Max(0, 1 - Warp.Share - Weft.Share) * Math.Max(0, view.Z);
        return (warp.Light + weft.Light) * (1 / whole);
    }

    private static (LinearColour Light, double Weight) Set(MicrocylinderThread thread, Direction way, Direction light, Direction view)
    {
        LinearColour sum = default;
        double weight = 0;
        foreach (double degrees in thread.TangentDegrees)
        {
            (double sin, double cos) = Math.SinCos(degrees * Math.PI / 180);
            Direction tangent = way * cos + Direction.OffTheFace * sin;
            Direction normal = Direction.OffTheFace * cos - way * sin;
            (LinearColour cylinder, double seen) = Cylinder(thread, tangent, normal, light, view);
            sum += cylinder * seen;
            weight += seen;
        }

        double each = thread.Share / thread.TangentDegrees.Length;
        return (sum * each, weight * each);
    }

    private static (LinearColour Light, double Seen) Cylinder(MicrocylinderThread thread, Direction tangent, Direction normal, Direction light, Direction view)
    {
        double sinIn = Math.Clamp(tangent.Dot(light), -0.9999, 0.9999);
        double sinOut = Math.Clamp(tangent.Dot(view), -0.9999, 0.9999);
        double angleIn = Math.Asin(sinIn);
        double angleOut = Math.Asin(sinOut);
        double cosIn = Math.Cos(angleIn);
        double cosOut = Math.Cos(angleOut);
        Direction planeIn = (light - tangent * sinIn) * (1 / cosIn);
        Direction planeOut = (view - tangent * sinOut) * (1 / cosOut);
        double round = Math.Acos(Math.Clamp(planeIn.Dot(planeOut), -1, 1));
        double lit = ThreadShading.Seen(normal.Dot(planeIn), normal.Dot(planeOut), round);
        double rise = Math.Atan2(sinIn, normal.Dot(light)) - Math.Atan2(sinOut, normal.Dot(view));
        double seen = ThreadShading.Seen(Math.Cos(Math.Atan2(sinIn, normal.Dot(light))), Math.Cos(Math.Atan2(sinOut, normal.Dot(view))), rise);

        double half = (angleIn + angleOut) / 2;
        double cosDifference = Math.Cos((angleIn - angleOut) / 2);
        double cosHalfRound = Math.Cos(round / 2);
        double fresnel = Fresnel(thread.RefractiveIndex, cosDifference * cosHalfRound);
        double gloss = fresnel * cosHalfRound * ThreadShading.Gaussian(Radians(thread.GlossWidthDegrees), half);
        double body = (1 - fresnel) * (1 - fresnel)
            * ((1 - thread.Evenness) * ThreadShading.Gaussian(Radians(thread.BodyWidthDegrees), half) + thread.Evenness)
            / (cosIn + cosOut);
        double common = lit * cosIn / (cosDifference * cosDifference);
        return ((new LinearColour(gloss, gloss, gloss) + thread.Albedo * body) * common, seen);
    }

    // Unpolarised light on a smooth dielectric.
    private static double Fresnel(double index, double cosIn)
    {
        double cos = Math.Clamp(cosIn, 0, 1);
        double cosInside = Math.Sqrt(1 - (1 - cos * cos) / (index * index));
        double across = (cos - index * cosInside) / (cos + index * cosInside);
        double along = (index * cos - cosInside) / (index * cos + cosInside);
        return (across * across + along * along) / 2;
    }

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
