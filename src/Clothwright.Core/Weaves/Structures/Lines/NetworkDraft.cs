using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Analysis.Layers;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>A weave on a network threading: curves in twill.</summary>
public static class NetworkDraft
{
    /// <summary>The line is laid on the net of the initial.</summary>
    public static Rule Rule { get; } = new(
        "network drafting",
        "in column j shaft s is allowed if s ≡ initial[j mod k] (mod r); each thread takes the lowest allowed shaft on or above the line, counted round",
        Source.FromMemoryOf("a 1994 book on network drafting"));

    /// <summary>One repeat: the length of the line, so that initial and line meet again.</summary>
    /// <param name="initial">The small threading, rows from 1.</param>
    /// <param name="line">Height of the line in each column, from 1.</param>
    /// <param name="figures">Twill of the tie-up; its sum is the number of shafts.</param>
    /// <param name="asDrawnIn">Treadled along the same line instead of straight.</param>
    /// <exception cref="InputProblemException">Initial, shafts or line do not fit each other.</exception>
    public static Weave Of(IReadOnlyList<int> initial, IReadOnlyList<int> line, TwillBase figures, bool asDrawnIn = false)
    {
        int n = figures.Shafts;
        int[] threading = [.. NetworkThreading.Along(initial, n, line)];
        Weave weave = Weave.FromTreadles($"network draft, {figures}", Rule, threading, figures.TieUp, asDrawnIn ? threading : DrawOrder.Straight(n));
        weave = Held(weave);
        return line.Count % initial.Count == 0
            ? weave
            : weave.Noting($"The line has {line.Count} columns, no multiple of the initial's {initial.Count}: the net breaks where the repeat joins.");
    }

    /// <summary>One repeat with lifts of the weaver's choice.</summary>
    /// <param name="initial">The small threading, rows from 1.</param>
    /// <param name="line">Height of the line in each column, from 1.</param>
    /// <param name="shafts">Shafts, a multiple of the initial's rows.</param>
    /// <param name="lifts">Shafts lifted on each pick; whole residue classes of the initial weave its own structure whatever the line.</param>
    /// <exception cref="InputProblemException">Initial, shafts or line do not fit each other.</exception>
    public static Weave Of(IReadOnlyList<int> initial, IReadOnlyList<int> line, int shafts, IReadOnlyList<ShaftSet> lifts) =>
        Held(Weave.FromLifts("network draft", Rule, [.. NetworkThreading.Along(initial, shafts, line)], lifts));

    // A line that keeps to few shafts can leave a pick without any end up or down.
    private static Weave Held(Weave weave)
    {
        ClothLayers layers = ClothLayers.Of(weave.Draft.Drawdown());
        return layers.HangsTogether
            ? weave
            : weave.Noting($"This line does not hold together: {string.Join("; ", layers.Components.Take(5))}. Let it pass over more shafts, or change the tie-up.") with { Layers = layers.Components.Length };
    }
}
