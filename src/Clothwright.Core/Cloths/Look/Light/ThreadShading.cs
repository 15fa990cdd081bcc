namespace Clothwright.Core.Cloths.Look.Light;

/// <summary>Light on one point of a twisted thread, seen as a bundle of fine cylinders along its fibres.</summary>
/// <remarks>
/// After I. Sadeghi, O. Bisker, J. De Deken and H. W. Jensen, A practical microcylinder appearance model for cloth rendering,
/// ACM Transactions on Graphics 32(2), 2013: gloss and body lobes over the half angle, shadowing partly correlated. The bend of the
/// thread at its crossings and the slant of its fibres turn the cylinders.
/// </remarks>
public static class ThreadShading
{
    // How far a section of the thread is followed towards its edge, where its normal would lie in the cloth.
    private const double Roundness = 0.95;
    private const double Correlation = 20 * Math.PI / 180;
    private const double Steepest = 0.9999;

    /// <summary>Light of a point.</summary>
    /// <param name="lustre">Fibre.</param>
    /// <param name="thread">Which way the thread runs.</param>
    /// <param name="light">Towards the lamp, 1 long.</param>
    /// <param name="view">Towards the eye, 1 long.</param>
    /// <param name="twistRadians">Slant of the fibres: atan(π d T) for diameter d and turns per length T; above 0 for Z twist.</param>
    /// <param name="tiltRadians">How steeply the thread rises along its way.</param>
    /// <param name="across">Place across the thread, −1 to 1; to the right on an end, away from the weaver on a pick.</param>
    public static ThreadLight At(Lustre lustre, ThreadDirection thread, Direction light, Direction view, double twistRadians, double tiltRadians, double across)
    {
        ArgumentNullException.ThrowIfNull(lustre);
        (double sinTilt, double cosTilt) = Math.SinCos(tiltRadians);
        bool warp = thread == ThreadDirection.Warp;
        Direction along = warp ? new(0, cosTilt, sinTilt) : new(cosTilt, 0, sinTilt);
        Direction crown = warp ? new(0, -sinTilt, cosTilt) : new(-sinTilt, 0, cosTilt);
        Direction aside = warp ? new(1, 0, 0) : new(0, 1, 0);
        double sin = Roundness * across;
        double cos = Math.Sqrt(1 - sin * sin);
        Direction normal = crown * cos + aside * sin;
        if (lustre.IsPile) return Pile(normal, light, view);

        (double sinTwist, double cosTwist) = Math.SinCos(warp ? twistRadians : -twistRadians);
        Direction fibre = along * cosTwist + (aside * cos - crown * sin) * sinTwist;
        double sinIn = Math.Clamp(fibre.Dot(light), -Steepest, Steepest);
        double sinOut = Math.Clamp(fibre.Dot(view), -Steepest, Steepest);
        double angleIn = Math.Asin(sinIn);
        double angleOut = Math.Asin(sinOut);
        double cosIn = Math.Cos(angleIn);
        double cosOut = Math.Cos(angleOut);
        Direction planeIn = (light - fibre * sinIn) * (1 / cosIn);
        Direction planeOut = (view - fibre * sinOut) * (1 / cosOut);
        double round = Math.Acos(Math.Clamp(planeIn.Dot(planeOut), -1, 1));
        double lit = Seen(normal.Dot(planeIn), normal.Dot(planeOut), round);
        double half = (angleIn + angleOut) / 2;
        double cosDifference = Math.Cos((angleIn - angleOut) / 2);
        double cosHalfRound = Math.Cos(round / 2);
        double fresnel = lustre.Reflectance + (1 - lustre.Reflectance) * Math.Pow(1 - cosDifference * cosHalfRound, 5);
        double common = cosIn * lit / Math.Max(cosDifference * cosDifference, 0.05);
        double gloss = fresnel * cosHalfRound * Gaussian(lustre.GlossWidthRadians, half) * common;
        double body = (1 - fresnel) * (1 - fresnel)
            * ((1 - lustre.Evenness) * Gaussian(lustre.BodyWidthRadians, half) + lustre.Evenness)
            / (cosIn + cosOut) * common;
        return new ThreadLight(body * lustre.BodyShare, gloss);
    }

    /// <summary>Share of a cylinder's side that lamp and eye both reach: between independent and fully correlated.</summary>
    /// <param name="cosIn">Cosine towards the lamp, below 0 in shadow.</param>
    /// <param name="cosOut">Cosine towards the eye, below 0 hidden.</param>
    /// <param name="differenceRadians">Angle between both.</param>
    internal static double Seen(double cosIn, double cosOut, double differenceRadians)
    {
        double lit = Math.Max(cosIn, 0);
        double seen = Math.Max(cosOut, 0);
        double correlated = Math.Exp(-differenceRadians * differenceRadians / (2 * Correlation * Correlation));
        return (1 - correlated) * lit * seen + correlated * Math.Min(lit, seen);
    }

    /// <summary>Normal distribution over an angle.</summary>
    internal static double Gaussian(double width, double angle) =>
        Math.Exp(-angle * angle / (2 * width * width)) / (width * Math.Sqrt(2 * Math.PI));

    // Pile stands every way: no fibre direction, soft light, a bright rim. Our own judgement.
    private static ThreadLight Pile(Direction normal, Direction light, Direction view)
    {
        double rim = Math.Pow(1 - Math.Max(normal.Dot(view), 0), 1.5);
        return new ThreadLight((0.5 + 0.5 * normal.Dot(light)) * (0.35 + 0.65 * rim), 0);
    }
}
