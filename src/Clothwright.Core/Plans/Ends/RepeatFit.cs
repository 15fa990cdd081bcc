namespace Clothwright.Core.Plans.Ends;

/// <summary>A number of ends made of whole repeats and a rest.</summary>
/// <param name="Repeats">Whole repeats.</param>
/// <param name="BalancingEnds">Ends beyond them.</param>
public readonly record struct RepeatFit(int Repeats, int BalancingEnds)
{
    /// <summary>The whole number of repeats, with balancing ends, nearest to a wanted number of ends.</summary>
    /// <param name="wantedEnds">Wanted ends of the pattern; above 0.</param>
    /// <param name="repeat">Ends of one repeat; above 0.</param>
    /// <param name="balancing">Ends that balance any number of repeats; 0 or more.</param>
    /// <returns>At least one repeat, unless even one is more than half as wide again as wanted: then the wanted ends, cut.</returns>
    public static RepeatFit Nearest(double wantedEnds, int repeat, int balancing)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(wantedEnds);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(repeat);
        ArgumentOutOfRangeException.ThrowIfNegative(balancing);
        int repeats = Math.Max(1, (int)Math.Round((wantedEnds - balancing) / repeat, MidpointRounding.AwayFromZero));
        return repeats == 1 && repeat + balancing > 1.5 * wantedEnds
            ? new RepeatFit(0, Math.Max(1, (int)Math.Ceiling(wantedEnds)))
            : new RepeatFit(repeats, balancing);
    }

    /// <summary>As many ends as wanted, rounded up; what goes beyond whole repeats is cut.</summary>
    /// <param name="wantedEnds">Wanted ends of the pattern; above 0.</param>
    /// <param name="repeat">Ends of one repeat; above 0.</param>
    public static RepeatFit Cut(double wantedEnds, int repeat)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(wantedEnds);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(repeat);
        int ends = (int)Math.Ceiling(wantedEnds - 1e-9);
        return new RepeatFit(ends / repeat, ends % repeat);
    }
}
