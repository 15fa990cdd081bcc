namespace Clothwright.Drawing.Faces;

/// <summary>A little shadow toward the edges of a thread, so that over and under can be read close by.</summary>
/// <remarks>
/// The middle half of a thread keeps its own colour exactly. The shadow fades in between 3 and 8 dots per thread: a cloth seen
/// from farther away is the plain mean of its colours.
/// </remarks>
internal readonly record struct ThreadShade
{
    private const double FewestDots = 3;
    private const double FullDots = 8;
    private const double Deepest = 0.45;
    private readonly double _depth;

    /// <param name="dotsPerThread">Dots across the mean share of a thread.</param>
    public ThreadShade(double dotsPerThread) =>
        _depth = Deepest * Math.Clamp((dotsPerThread - FewestDots) / (FullDots - FewestDots), 0, 1);

    /// <summary>Factor on the light of the thread.</summary>
    /// <param name="across">Where across the thread, 0 to 1.</param>
    /// <param name="along">Where along the crossing, 0 to 1; pass 0.5 where the thread goes on over the next crossing.</param>
    public double Light(double across, double along)
    {
        if (_depth == 0) return 1;
        return (1 - _depth * Edge(across)) * (1 - _depth * Edge(along));
    }

    // 0 in the middle half, rising to 1 at either edge.
    private static double Edge(double place)
    {
        double outside = Math.Max(0, Math.Abs(place - 0.5) - 0.25) / 0.25;
        return outside * outside;
    }
}
