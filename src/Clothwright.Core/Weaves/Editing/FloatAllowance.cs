using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Analysis.Floats;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>How many threads a float may pass.</summary>
/// <param name="Ends">Ends that a pick may pass; 1 or more.</param>
/// <param name="Picks">Picks that an end may pass; 1 or more.</param>
public readonly record struct FloatAllowance(int Ends, int Picks)
{
    /// <summary>As many as lie in the longest float that does well for a purpose.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="ends">Ends per unit of width.</param>
    /// <param name="picks">Picks per unit of length.</param>
    public static FloatAllowance For(FloatRule rule, Sett ends, Sett picks)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return new FloatAllowance(Threads(rule.Longest, ends), Threads(rule.Longest, picks));
    }

    // Three threads are no float worth speaking of, however far apart they lie.
    private static int Threads(Length longest, Sett sett) => Math.Max(3, (int)Math.Floor(longest / sett.Spacing + 1e-9));
}
