namespace Clothwright.Core.Weaves.Analysis.Threads;

/// <summary>Finds the symmetries of a cloth without edges.</summary>
public static class ClothSymmetry
{
    /// <summary>The symmetries of the repeat, wherever its mirrors and centres lie.</summary>
    /// <param name="cloth">The drawdown; it is first cut to one repeat.</param>
    public static ClothSymmetries Of(Drawdown cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ClothRepeat repeat = ClothRepeat.Of(cloth);
        Drawdown one = repeat.Ends == cloth.Ends && repeat.Picks == cloth.Picks ? cloth : cloth.Piece(0, repeat.Ends, 0, repeat.Picks);
        Drawdown sideways = one.EndsReversed();
        Drawdown complement = one.Complement();
        Drawdown turned = one.Transposed().Complement();
        ClothSymmetries found = ClothSymmetries.None;
        if (SameUpToShift(one, sideways)) found |= ClothSymmetries.SideToSide;
        if (SameUpToShift(one, one.PicksReversed())) found |= ClothSymmetries.EndToEnd;
        if (SameUpToShift(one, sideways.PicksReversed())) found |= ClothSymmetries.HalfTurn;
        if (SameUpToShift(one, complement.EndsReversed())) found |= ClothSymmetries.FacesAlike;
        if (SameUpToShift(one, complement)) found |= ClothSymmetries.Counterchange;
        if (SameUpToShift(one, one.TurnedClockwise())) found |= ClothSymmetries.QuarterTurn;
        if (SameUpToShift(one, turned)) found |= ClothSymmetries.WarpAsWeft;
        return found;
    }

    /// <summary>Whether two repeats are the same endless cloth, seen from another end and pick.</summary>
    /// <param name="one">A repeat.</param>
    /// <param name="other">Another.</param>
    public static bool SameUpToShift(Drawdown one, Drawdown other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        if (one.Ends != other.Ends || one.Picks != other.Picks || one.WarpOnTop != other.WarpOnTop) return false;

        // Only where the first pick of the other meets some pick of the one is the rest worth comparing.
        var firstPicks = Enumerable.Range(0, one.Picks).Select(one.RowText).ToHashSet(StringComparer.Ordinal);
        string first = other.RowText(0);
        for (int endShift = 0; endShift < one.Ends; endShift++)
        {
            if (!firstPicks.Contains(first[endShift..] + first[..endShift])) continue;
            Drawdown shifted = other.Piece(endShift, one.Ends, 0, one.Picks);
            if (Enumerable.Range(0, one.Picks).Any(pickShift => SameFrom(one, shifted, pickShift))) return true;
        }

        return false;
    }

    private static bool SameFrom(Drawdown one, Drawdown other, int pickShift)
    {
        for (int pick = 0; pick < one.Picks; pick++)
        {
            if (!one.Row((pick + pickShift) % one.Picks).SequenceEqual(other.Row(pick))) return false;
        }

        return true;
    }
}
