using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Weaves;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>The threading of the whole warp, end by end, with the yarn of each end.</summary>
/// <param name="Ends">The shafts of each end from the left; none for a floating selvedge.</param>
/// <param name="Yarns">The yarn of each end from the left.</param>
internal sealed record FullThreading(ImmutableArray<ShaftSet> Ends, ImmutableArray<Yarn> Yarns)
{
    /// <summary>The threading of a plan: floating selvedge, selvedge, pattern, selvedge, floating selvedge.</summary>
    /// <remarks>Selvedge ends carry the threading on beyond the pattern.</remarks>
    public static FullThreading Of(PlanResult plan)
    {
        EndsPlan ends = plan.Ends;
        ImmutableArray<ShaftSet> repeat = plan.LoomDraft.Threading;
        int total = (int)ends.Total.Value.Count;
        int floating = ends.FloatingSelvedges / 2;
        int left = ends.SelvedgeEnds / 2;
        int inner = total - 2 * floating;
        var threading = ImmutableArray.CreateBuilder<ShaftSet>(total);
        for (int i = 0; i < floating; i++) threading.Add(ShaftSet.None);
        for (int i = 0; i < inner; i++) threading.Add(repeat[((i - left) % repeat.Length + repeat.Length) % repeat.Length]);
        for (int i = 0; i < floating; i++) threading.Add(ShaftSet.None);
        Dictionary<string, Yarn> shelf = plan.Request.Shelf.ToDictionary(y => y.Id, StringComparer.Ordinal);
        return new FullThreading(threading.ToImmutable(), [.. plan.WarpRuns.SelectMany(r => Enumerable.Repeat(shelf[r.YarnId], r.Threads))]);
    }

    /// <summary>Colours of the ends from the left.</summary>
    public ImmutableArray<SrgbColour> Colours => [.. Yarns.Select(y => y.Colour)];

    /// <summary>How many ends are on a shaft.</summary>
    /// <param name="shaft">From 1.</param>
    public int OnShaft(int shaft) => Ends.Count(e => e.Contains(shaft));
}
