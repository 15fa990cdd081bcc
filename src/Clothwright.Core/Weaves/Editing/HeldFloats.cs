using System.Collections.Immutable;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>Long floats caught on their way, so that none passes too many threads.</summary>
public static class HeldFloats
{
    /// <summary>The cloth with every float above a length caught as often as it takes, at even distances; neighbours by turns one thread further on, where there is room.</summary>
    /// <param name="cloth">One repeat.</param>
    /// <param name="kind">Which floats.</param>
    /// <param name="longest">What a float may pass.</param>
    public static Drawdown Of(Drawdown cloth, FloatKind kind, FloatAllowance longest)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        bool warp = kind is FloatKind.WarpFace or FloatKind.WarpBack;
        int allowed = warp ? longest.Picks : longest.Ends;
        int around = warp ? cloth.Picks : cloth.Ends;
        var caught = ImmutableArray.CreateBuilder<Crossing>();
        foreach (ThreadFloat found in LongFloats.Of(cloth, kind, ClothReading.Repeat, allowed))
        {
            foreach (int passed in Catches(found, allowed))
            {
                int at = (found.Start + passed) % around;
                caught.Add(warp ? new Crossing(at, found.Line) : new Crossing(found.Line, at));
            }
        }

        return cloth.ChangedOver(caught);
    }

    // Threads passed before each catch. Between n catches lie n + 1 stretches; of an endless float, which closes on itself, n.
    private static IEnumerable<int> Catches(ThreadFloat found, int allowed)
    {
        if (found.Endless)
        {
            int times = (found.Length + allowed) / (allowed + 1);
            return Enumerable.Range(0, times).Select(k => (int)((long)found.Length * k / times) + found.Line);
        }

        int catches = found.Length / (allowed + 1);
        int shortest = (found.Length + 1) / (catches + 1);
        int stagger = shortest <= allowed ? found.Line % 2 : 0;
        return Enumerable.Range(1, catches).Select(k => (int)((long)(found.Length + 1) * k / (catches + 1)) - 1 + stagger).Where(passed => passed < found.Length);
    }
}
