using Clothwright.Core.Photographs.Pictures;

namespace Clothwright.Core.Photographs.Threads;

/// <summary>Reads strips across a square of cloth.</summary>
/// <param name="photograph">The photograph.</param>
/// <param name="mapping">Where the cloth lies in it.</param>
/// <param name="middle">Middle of the square on the cloth.</param>
/// <param name="sideMillimetres">Side of the square.</param>
/// <param name="mostRows">The most rows of samples averaged in a strip.</param>
internal sealed class StripReader(Photograph photograph, PlaneMapping mapping, ClothPoint middle, double sideMillimetres, int mostRows)
{
    /// <summary>Reads some strips at a spacing that threads may have.</summary>
    /// <param name="perMillimetre">Threads in a millimetre.</param>
    /// <param name="angle">Turn of the direction in which they are counted, radians clockwise from the picture's axis.</param>
    /// <param name="down">Whether they are counted downwards; else to the right.</param>
    /// <param name="depthMillimetres">How far along the threads each strip reaches.</param>
    /// <param name="strips">How many strips, spread over the square.</param>
    public StripReading Read(double perMillimetre, double angle, bool down, double depthMillimetres, int strips)
    {
        (double sin, double cos) = Math.SinCos(angle);
        (double X, double Y) across = down ? (-sin, cos) : (cos, sin);
        double depth = Math.Min(depthMillimetres, sideMillimetres / (strips + 1));
        var middles = new ClothPoint[strips];
        for (int k = 0; k < strips; k++)
        {
            double off = sideMillimetres * 0.9 * ((k + 0.5) / strips - 0.5);
            middles[k] = new ClothPoint(middle.XMillimetres - off * across.Y, middle.YMillimetres + off * across.X);
        }

        return ReadAll(photograph, mapping, middles, across, sideMillimetres, depth, perMillimetre, mostRows);
    }

    /// <summary>Reads a single strip, as along a rod.</summary>
    /// <param name="photograph">The photograph.</param>
    /// <param name="mapping">Where the plane lies in it.</param>
    /// <param name="middle">Middle of the strip.</param>
    /// <param name="across">Direction in which threads are counted, length 1.</param>
    /// <param name="lengthMillimetres">Length of the strip.</param>
    /// <param name="depthMillimetres">How far along the threads it reaches.</param>
    /// <param name="perMillimetre">Threads in a millimetre.</param>
    /// <param name="mostRows">The most rows of samples averaged.</param>
    public static StripReading ReadOne(Photograph photograph, PlaneMapping mapping, ClothPoint middle, (double X, double Y) across, double lengthMillimetres, double depthMillimetres, double perMillimetre, int mostRows) =>
        ReadAll(photograph, mapping, [middle], across, lengthMillimetres, depthMillimetres, perMillimetre, mostRows);

    private static StripReading ReadAll(Photograph photograph, PlaneMapping mapping, ClothPoint[] middles, (double X, double Y) across, double length, double depth, double perMillimetre, int mostRows)
    {
        int strips = middles.Length;
        var fold = new GapFold();
        double[] counted = new double[strips];
        double[] phased = new double[strips];
        var gaps = new ClothPoint[strips][];
        double strength = 0;
        double pairs = 0;
        for (int k = 0; k < strips; k++)
        {
            ThreadStrip strip = ThreadStrip.Read(photograph, mapping, middles[k], across, length, depth, 1 / perMillimetre, mostRows);
            double[] places = GapWalk.Walk(strip.Valleys, ThreadStrip.SamplesAPitch);
            (double ratio, double found) = PhaseRefinement.Refine(strip.Valleys, ThreadStrip.SamplesAPitch);
            pairs += PhaseRefinement.Refine(strip.Valleys, 2 * ThreadStrip.SamplesAPitch).Strength / strips;
            fold.Add(strip, places);
            strength += found / strips;
            phased[k] = ratio * perMillimetre;
            counted[k] = places.Length > 1
                ? (places.Length - 1) / (places[^1] - places[0]) * ThreadStrip.SamplesAPitch * perMillimetre
                : perMillimetre;
            gaps[k] = [.. places.Select(p => new ClothPoint(strip.Start.XMillimetres + p * strip.Step.X, strip.Start.YMillimetres + p * strip.Step.Y))];
        }

        return new StripReading
        {
            CountedPerMillimetre = counted,
            PhasedPerMillimetre = phased,
            Strength = Math.Min(1, strength),
            PairStrength = Math.Min(1, pairs),
            InnerGap = fold.InnerGap(),
            LightSwing = fold.LightSwing,
            HueSwing = fold.HueSwing,
            Gaps = gaps,
            Slant = Slant(gaps, counted),
        };
    }

    // How much closer threads stand at one end than at the other, and in the last strip than in the first.
    private static double Slant(ClothPoint[][] gaps, double[] counted)
    {
        double along = 0;
        foreach (ClothPoint[] strip in gaps)
        {
            if (strip.Length < 8) continue;
            int half = strip.Length / 2;
            double first = Distance(strip[0], strip[half]) / half;
            double second = Distance(strip[half], strip[^1]) / (strip.Length - 1 - half);
            along += Math.Log(first / second) / gaps.Length;
        }

        int side = counted.Length / 2;
        if (side == 0) return 2 * Math.Abs(along);
        double across = Math.Log(counted[..side].Average() / counted[^side..].Average());
        // Halves are half a side apart in the mean, as are the strips on either side.
        return 2 * Math.Sqrt(along * along + across * across);
    }

    private static double Distance(ClothPoint a, ClothPoint b) =>
        Math.Sqrt((a.XMillimetres - b.XMillimetres) * (a.XMillimetres - b.XMillimetres) + (a.YMillimetres - b.YMillimetres) * (a.YMillimetres - b.YMillimetres));
}
