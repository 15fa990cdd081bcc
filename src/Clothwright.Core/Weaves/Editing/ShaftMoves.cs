namespace Clothwright.Core.Weaves.Editing;

/// <summary>Shafts or treadles of one thread, moved among their like.</summary>
public static class ShaftMoves
{
    /// <summary>Every member a number of places higher; past the highest it goes on from 1.</summary>
    /// <param name="set">Members from 1 to <paramref name="count"/>; others stay where they are.</param>
    /// <param name="by">Places; below 0 lower.</param>
    /// <param name="count">Shafts or treadles there are, 1 to 64.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside 1 to 64.</exception>
    public static ShaftSet Raised(ShaftSet set, int by, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, ShaftSet.Highest);
        int up = (by % count + count) % count;
        ShaftSet moved = default;
        foreach (int member in set.Members()) moved |= ShaftSet.Of(member > count ? member : (member - 1 + up) % count + 1);
        return moved;
    }

    /// <summary>The highest becomes the lowest.</summary>
    /// <param name="set">Members from 1 to <paramref name="count"/>; others stay where they are.</param>
    /// <param name="count">Shafts or treadles there are, 1 to 64.</param>
    public static ShaftSet UpsideDown(ShaftSet set, int count)
    {
        ShaftSet moved = default;
        foreach (int member in set.Members()) moved |= ShaftSet.Of(member > count ? member : count + 1 - member);
        return moved;
    }

    /// <summary>Two members change their numbers.</summary>
    /// <param name="set">A set.</param>
    /// <param name="one">1 to 64.</param>
    /// <param name="other">1 to 64.</param>
    public static ShaftSet Exchanged(ShaftSet set, int one, int other)
    {
        if (set.Contains(one) == set.Contains(other)) return set;
        return new ShaftSet(set.Bits ^ ShaftSet.Of(one, other).Bits);
    }
}
