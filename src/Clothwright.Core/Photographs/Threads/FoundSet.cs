namespace Clothwright.Core.Photographs.Threads;

/// <summary>One set of threads as found: the spacing taken, how far the next best is behind, and whether its gaps were counted two by two.</summary>
/// <param name="Best">The spacing taken.</param>
/// <param name="Counted">Where the gaps were counted: the spacing taken, or the double one where only every second gap is seen.</param>
/// <param name="Rival">The best spacing that would be another answer.</param>
/// <param name="Margin">How far the rival is behind, as a share of the best: 0 alike, 1 no rival.</param>
internal sealed record FoundSet(ThreadCandidate Best, ThreadCandidate Counted, ThreadCandidate? Rival, double Margin)
{
    private const double FitEnough = 0.5;

    /// <summary>Whether only every second gap is seen, as where a dark thread hides the gaps on both its sides.</summary>
    public bool ByTwos => !ReferenceEquals(Best, Counted);

    /// <summary>Puts together what was found.</summary>
    public static FoundSet Of(ThreadCandidate best, IReadOnlyList<ThreadCandidate> all, double weight, (ThreadCandidate Candidate, double Weight)? rival)
    {
        ThreadCandidate counted = best;
        if (best.Strips.Fit < FitEnough)
        {
            counted = all.FirstOrDefault(c => c.Strips.Fit > best.Strips.Fit + 0.2 && Math.Abs(Math.Log(best.Ray.PerMillimetre / c.Ray.PerMillimetre / 2)) < 0.04) ?? best;
        }

        double margin = rival is { } r ? Math.Clamp(1 - r.Weight / Math.Max(weight, 1e-9), 0, 1) : 1;
        return new FoundSet(best, counted, rival?.Candidate, margin);
    }
}
