using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Every twill there is on a number of shafts, each once.</summary>
public static class EveryTwill
{
    /// <summary>The most shafts that are gone through.</summary>
    public const int MostShafts = 16;

    /// <summary>The twills of a period, one for all that differ only in where they start, in hand, or in face.</summary>
    /// <remarks>Numbers: Grünbaum and Shephard, Satins and twills (1980), theorem 2; OEIS A056357.</remarks>
    /// <param name="shafts">Ends in the repeat, 2 to <see cref="MostShafts"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="shafts"/> is out of range.</exception>
    public static ImmutableArray<TwillBase> On(int shafts)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(shafts, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(shafts, MostShafts);
        int all = (1 << shafts) - 1;
        var twills = ImmutableArray.CreateBuilder<TwillBase>();
        for (int word = 1; word < all; word++)
        {
            if (word == Least(word, shafts, all)) twills.Add(Figures(word, shafts));
        }

        return twills.ToImmutable();
    }

    private static int Least(int word, int shafts, int all)
    {
        int least = all;
        int mirrored = 0;
        for (int i = 0; i < shafts; i++) mirrored |= ((word >> i) & 1) << (shafts - 1 - i);
        for (int turn = 0; turn < shafts; turn++)
        {
            int straight = ((word << turn) | (word >> (shafts - turn))) & all;
            int back = ((mirrored << turn) | (mirrored >> (shafts - turn))) & all;
            least = Math.Min(Math.Min(least, Math.Min(straight, all & ~straight)), Math.Min(back, all & ~back));
        }

        return least;
    }

    // Reads the word from the start of a run of 1s.
    private static TwillBase Figures(int word, int shafts)
    {
        int start = 0;
        while (!(IsUp(start) && !IsUp(start - 1))) start++;
        var runs = new List<int>();
        for (int i = 0; i < shafts; i++)
        {
            if (i == 0 || IsUp(start + i) != IsUp(start + i - 1)) runs.Add(0);
            runs[^1]++;
        }

        return TwillBase.Of([.. runs]);

        bool IsUp(int place) => ((word >> ((place + shafts) % shafts)) & 1) != 0;
    }
}
