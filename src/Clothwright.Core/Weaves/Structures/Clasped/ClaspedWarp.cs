using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Clasped warp: two yarns meet along each end, clasp and turn back, so that each end is double and changes colour where they meet.</summary>
public sealed class ClaspedWarp
{
    private ClaspedWarp(Length warpLength, ImmutableArray<Length> joins, Length pickSpacing)
    {
        WarpLength = warpLength;
        Joins = joins;
        CrowdedEnds = [.. Enumerable.Range(1, joins.Length - 1).Where(e => Math.Abs(joins[e].Metres - joins[e - 1].Metres) < pickSpacing.Metres)];
        Derived<Length> along = Derived.Decision("warp length", warpLength);
        Derived<Length> mean = Derived.Given("mean place of the joins", Length.FromMetres(joins.Average(j => j.Metres)), Source.Decision, formula: "mean of the joins from the front");
        Derived<Whole> ends = Derived.Decision("ends", Whole.FromCount(joins.Length));
        FrontYarn = Derived.From<Length>("warp from the front", Rule, mean, ends, (y, n) => 2 * y * n);
        BackYarn = Derived.From<Length>("warp from the back", Rule, along, mean, ends, (l, y, n) => 2 * Math.Max(0, l - y) * n);
    }

    /// <summary>Each yarn goes to the join and back.</summary>
    public static Rule Rule { get; } = new(
        "clasped warp", "each end holds two strands: front yarn 2y, back yarn 2(L − y), y = join from the front, L = warp length", Source.Derivation);

    /// <summary>Warp length.</summary>
    public Length WarpLength { get; }

    /// <summary>Where the yarns meet on each end, from the front.</summary>
    public ImmutableArray<Length> Joins { get; }

    /// <summary>0-based ends whose join lies less than a pick from that of the end before: the loops would crowd there.</summary>
    public ImmutableArray<int> CrowdedEnds { get; }

    /// <summary>Yarn from the front for all ends.</summary>
    public Derived<Length> FrontYarn { get; }

    /// <summary>Yarn from the back for all ends.</summary>
    public Derived<Length> BackYarn { get; }

    /// <summary>A plan from its joins.</summary>
    /// <param name="warpLength">Warp length, above 0.</param>
    /// <param name="joins">Where the yarns meet on each end, from the front; 0 to the length.</param>
    /// <param name="pickSpacing">Distance from pick to pick.</param>
    public static Parsed<ClaspedWarp> Of(Length warpLength, IReadOnlyList<Length> joins, Length pickSpacing)
    {
        if (warpLength <= Length.Zero) return new InputProblem($"A warp {warpLength} long cannot be wound.", "length", "Give the warp length, for example 3 m.");
        if (joins.Count is 0 or > DraftLimits.Ends) return new InputProblem($"{joins.Count} ends cannot be planned.", "joins", $"Give 1 to {DraftLimits.Ends} ends.");
        for (int end = 0; end < joins.Count; end++)
        {
            if (joins[end] > warpLength) return new InputProblem($"The yarns meet at {joins[end]}, beyond the warp of {warpLength}.", $"joins[{end}]", $"Give a place from 0 to {warpLength}.");
        }

        return new ClaspedWarp(warpLength, [.. joins], pickSpacing);
    }

    /// <summary>The same plan with every second join moved back by a distance, so that neighbours meet on different picks.</summary>
    /// <param name="by">Distance, two picks or so.</param>
    /// <param name="pickSpacing">Distance from pick to pick.</param>
    public ClaspedWarp Staggered(Length by, Length pickSpacing) => new(
        WarpLength,
        [.. Joins.Select((join, end) => end % 2 == 0 ? join : Length.FromMetres(Math.Min(WarpLength.Metres, join.Metres + by.Metres)))],
        pickSpacing);
}
