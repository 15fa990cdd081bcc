using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Editing;

/// <summary>Changes of a drawdown by hand: a cloth in, a cloth out.</summary>
public static class ClothEdits
{
    /// <summary>Crossings painted.</summary>
    /// <param name="cloth">The drawdown.</param>
    /// <param name="crossings">Which; those outside the cloth are left out.</param>
    /// <param name="warpOnTop">Whether the warp comes to lie on top.</param>
    public static Drawdown Painted(this Drawdown cloth, IEnumerable<Crossing> crossings, bool warpOnTop)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ArgumentNullException.ThrowIfNull(crossings);
        ulong[] words = Words(cloth);
        foreach ((int pick, int end) in crossings)
        {
            if (pick < 0 || pick >= cloth.Picks || end < 0 || end >= cloth.Ends) continue;
            ulong bit = 1UL << (end & 63);
            ref ulong word = ref words[pick * cloth.WordsPerPick + (end >> 6)];
            word = warpOnTop ? word | bit : word & ~bit;
        }

        return new Drawdown(cloth.Ends, cloth.Picks, words);
    }

    /// <summary>Crossings changed over: what was warp on top is weft on top.</summary>
    /// <param name="cloth">The drawdown.</param>
    /// <param name="crossings">Which; those outside the cloth are left out.</param>
    public static Drawdown ChangedOver(this Drawdown cloth, IEnumerable<Crossing> crossings)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ArgumentNullException.ThrowIfNull(crossings);
        ulong[] words = Words(cloth);
        foreach ((int pick, int end) in crossings.Distinct())
        {
            if (pick < 0 || pick >= cloth.Picks || end < 0 || end >= cloth.Ends) continue;
            words[pick * cloth.WordsPerPick + (end >> 6)] ^= 1UL << (end & 63);
        }

        return new Drawdown(cloth.Ends, cloth.Picks, words);
    }

    /// <summary>A piece of cloth put over what is there; what reaches past the edges is left out.</summary>
    /// <param name="cloth">The drawdown.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="at">The crossing at which its end 1 and pick 1 come to lie.</param>
    public static Drawdown WithOver(this Drawdown cloth, Drawdown piece, Crossing at)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ArgumentNullException.ThrowIfNull(piece);
        bool Inside(int pick, int end) => pick >= at.Pick && pick < at.Pick + piece.Picks && end >= at.End && end < at.End + piece.Ends;
        return Drawdown.From(cloth.Ends, cloth.Picks, (pick, end) => Inside(pick, end) ? piece[pick - at.Pick, end - at.End] : cloth[pick, end]);
    }

    /// <summary>Ends in another order, or more or fewer of them.</summary>
    /// <param name="cloth">The drawdown.</param>
    /// <param name="edit">The change.</param>
    /// <exception cref="Quantities.InputProblemException">No end would be left, or the change cannot be made on so many ends.</exception>
    public static Drawdown WithEnds(this Drawdown cloth, LineEdit edit)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ImmutableArray<int> ends = Order(cloth.Ends, edit, "end");
        return Drawdown.From(ends.Length, cloth.Picks, (pick, end) => cloth[pick, ends[end]]);
    }

    /// <summary>Picks in another order, or more or fewer of them.</summary>
    /// <param name="cloth">The drawdown.</param>
    /// <param name="edit">The change.</param>
    /// <exception cref="Quantities.InputProblemException">No pick would be left, or the change cannot be made on so many picks.</exception>
    public static Drawdown WithPicks(this Drawdown cloth, LineEdit edit)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ImmutableArray<int> picks = Order(cloth.Picks, edit, "pick");
        var words = new ulong[cloth.WordsPerPick * picks.Length];
        for (int pick = 0; pick < picks.Length; pick++) cloth.Row(picks[pick]).CopyTo(words.AsSpan(pick * cloth.WordsPerPick));
        return new Drawdown(cloth.Ends, picks.Length, words);
    }

    private static ImmutableArray<int> Order(int threads, LineEdit edit, string thread)
    {
        ArgumentNullException.ThrowIfNull(edit);
        ImmutableArray<int> order = edit.Apply<int>([.. Enumerable.Range(0, threads)]);
        return order.IsEmpty
            ? throw new Quantities.InputProblemException(new Quantities.InputProblem($"No {thread} of {threads} would be left.", "drawdown", $"Leave at least one {thread} in."))
            : order;
    }

    private static ulong[] Words(Drawdown cloth)
    {
        var words = new ulong[cloth.WordsPerPick * cloth.Picks];
        for (int pick = 0; pick < cloth.Picks; pick++) cloth.Row(pick).CopyTo(words.AsSpan(pick * cloth.WordsPerPick));
        return words;
    }
}
