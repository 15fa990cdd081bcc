using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Huck: half units of an odd number of threads on plain ground, with weft or warp floats in turn.</summary>
public static class Huck
{
    /// <summary>Leave a pattern shaft out for weft floats, add it for warp floats.</summary>
    public static Rule Rule { get; } = new(
        "huck",
        "half units 1 3 1 3 1 and 2 4 2 4 2 (1, 2 ground; 3, 4 pattern); tabby 14 / 23; on every second pick of a half unit leave the pattern shaft out (weft floats) or add the other (warp floats)",
        Source.Derivation);

    /// <summary>One repeat: two half units both ways.</summary>
    /// <param name="form">Which floats.</param>
    /// <param name="half">Threads in a half unit, an odd number from 3 to 11.</param>
    /// <exception cref="InputProblemException">The half unit is even or out of range.</exception>
    public static Weave Of(HuckForm form, int half = 5)
    {
        if (half is < 3 or > 11 || half % 2 == 0)
        {
            throw new InputProblemException(new InputProblem($"A half unit of {half} threads is no huck.", "half", "Give an odd number from 3 to 11, for example 5."));
        }

        ShaftSet first = form == HuckForm.Warp ? ShaftSet.Of(2, 3, 4) : ShaftSet.Of(2);
        ShaftSet second = form == HuckForm.Lace ? ShaftSet.Of(1) : ShaftSet.Of(1, 3, 4);
        int[] threading = [.. Turns(half, 1, 3), .. Turns(half, 2, 4)];
        ShaftSet[] lifts = [.. Turns(half, ShaftSet.Of(1, 4), first), .. Turns(half, ShaftSet.Of(2, 3), second)];
        string name = form switch { HuckForm.Lace => "huck lace", HuckForm.Warp => "huck, warp floats", _ => "huckaback" };
        return Weave.FromLifts(name, Rule, threading, lifts).Noting(
            $"Floats of {half}.", "Tabby 14 / 23 for hems and edges.", "Threads slide together when washed: the lace shows only then.");
    }

    private static IEnumerable<T> Turns<T>(int count, T odd, T even) => Enumerable.Range(0, count).Select(i => i % 2 == 0 ? odd : even);
}
