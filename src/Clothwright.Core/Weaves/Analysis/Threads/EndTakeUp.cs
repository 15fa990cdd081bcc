namespace Clothwright.Core.Weaves.Analysis.Threads;

/// <summary>How evenly the ends take up: ends that interlace often shorten more than ends that float, and drift apart in tension on one beam.</summary>
/// <param name="LeastCrossingsPerPick">Changes of face per pick in the stripe of ends that interlaces least; 0 to 1.</param>
/// <param name="MostCrossingsPerPick">Changes of face per pick in the stripe of ends that interlaces most; 0 to 1.</param>
/// <param name="LeastFrom">0-based first end of the stripe that interlaces least.</param>
/// <param name="MostFrom">0-based first end of the stripe that interlaces most.</param>
/// <param name="StripeEnds">Ends over which neighbours are averaged.</param>
public sealed record EndTakeUp(double LeastCrossingsPerPick, double MostCrossingsPerPick, int LeastFrom, int MostFrom, int StripeEnds)
{
    /// <summary>Above this ratio the stripes should be watched; common practice, no source.</summary>
    public const double WatchRatio = 1.25;

    /// <summary>Above this ratio a second beam or separate weights are advised; common practice, no source.</summary>
    public const double SecondBeamRatio = 1.6;

    /// <summary>Ends averaged together: a difference within a hand's breadth of threads evens out, a stripe does not; common practice, no source.</summary>
    public const int Neighbours = 12;

    /// <summary>How many times more the one stripe interlaces than the other; infinite if one does not interlace at all.</summary>
    public double Ratio => MostCrossingsPerPick == 0 ? 1 : MostCrossingsPerPick / LeastCrossingsPerPick;

    /// <summary>Whether a second beam or separate tension is advised.</summary>
    public bool NeedsSecondBeam => Ratio >= SecondBeamRatio;

    /// <summary>The advice as a sentence; empty when the ends take up evenly enough.</summary>
    public string Text => Ratio < WatchRatio ? ""
        : double.IsInfinity(Ratio) ? $"Ends from {LeastFrom + 1} do not interlace at all, ends from {MostFrom + 1} do: they cannot share a beam."
        : NeedsSecondBeam
            ? $"Ends from {MostFrom + 1} interlace {Ratio:0.0} times as often as ends from {LeastFrom + 1} and take up more:"
                + " wind them on a second beam, or hang the floating stripe on weights of its own."
            : $"Ends from {MostFrom + 1} interlace {Ratio:0.0} times as often as ends from {LeastFrom + 1}:"
                + " on a long warp watch for stripes that slacken, and weight them if they do.";

    /// <summary>Compares the stripes of a cloth, round the repeat.</summary>
    /// <param name="counts">Changes of face of each end.</param>
    public static EndTakeUp Of(WeaveCounts counts)
    {
        ArgumentNullException.ThrowIfNull(counts);
        int ends = counts.Ends;
        int stripe = Math.Min(Neighbours, ends);
        long sum = 0;
        for (int i = 0; i < stripe; i++) sum += counts.TransitionsPerEnd[i];
        (long least, long most) = (sum, sum);
        (int leastFrom, int mostFrom) = (0, 0);
        for (int from = 1; from < ends; from++)
        {
            sum += counts.TransitionsPerEnd[(from + stripe - 1) % ends] - counts.TransitionsPerEnd[from - 1];
            if (sum < least) (least, leastFrom) = (sum, from);
            if (sum > most) (most, mostFrom) = (sum, from);
        }

        double crossings = (double)stripe * counts.Picks;
        return new EndTakeUp(least / crossings, most / crossings, leastFrom, mostFrom, stripe);
    }
}
