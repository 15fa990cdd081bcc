using Clothwright.Core.Photographs.Pictures;

namespace Clothwright.Core.Photographs.Threads;

/// <summary>What strips across the cloth say about one spacing that threads may have.</summary>
internal sealed record StripReading
{
    // Basket weaves and reed marks pair threads a little.
    private const double UsualPairs = 0.2;

    /// <summary>Threads in a millimetre, counted gap by gap; one number for each strip.</summary>
    public required double[] CountedPerMillimetre { get; init; }

    /// <summary>Threads in a millimetre, from how the phase drifts; one number for each strip.</summary>
    public required double[] PhasedPerMillimetre { get; init; }

    /// <summary>How evenly the gaps come, 0 to 1: near 1 for threads, a few tenths for anything else.</summary>
    public required double Strength { get; init; }

    /// <summary>How deep another gap lies inside the mean thread, 0 to 1.</summary>
    public required double InnerGap { get; init; }

    /// <summary>How strongly every second gap differs from the others, 0 to 1: high where the gap between two threads was taken for a thread.</summary>
    public required double PairStrength { get; init; }

    /// <summary>Difference of the lightest and darkest place of the mean thread, nepers.</summary>
    public required double LightSwing { get; init; }

    /// <summary>Difference of the reddest and bluest place of the mean thread, nepers.</summary>
    public required double HueSwing { get; init; }

    /// <summary>Places of the gaps on the cloth, strip by strip.</summary>
    public required ClothPoint[][] Gaps { get; init; }

    /// <summary>How much closer threads stand at one side of the square than at the other, as a share: a sign of a slanted camera.</summary>
    public required double Slant { get; init; }

    /// <summary>How well the spacing explains the strips, 0 to 1.</summary>
    public double Fit => Strength * (1 - InnerGap) * (1 - Math.Max(0, PairStrength - UsualPairs));

    /// <summary>Threads in a millimetre: the middle of the counts.</summary>
    public double PerMillimetre => Middle(CountedPerMillimetre);

    /// <summary>The middle of the readings by phase.</summary>
    public double ByPhase => Middle(PhasedPerMillimetre);

    private static double Middle(double[] values)
    {
        double[] sorted = [.. values.Order()];
        int half = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
