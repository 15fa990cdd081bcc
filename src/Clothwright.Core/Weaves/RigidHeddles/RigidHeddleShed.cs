using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.RigidHeddles;

/// <summary>How all rigid heddles are held for a pick.</summary>
/// <remarks>
/// Ends in the eyes of heddle i are group i; ends in slots throughout are the group after the last heddle and stay in the middle.
/// k heddles make every shed of k + 1 groups that has two clear levels, each in exactly one way.
/// </remarks>
/// <param name="Positions">Where each heddle is held, heddle 1 (nearest the weaver) first.</param>
public sealed record RigidHeddleShed(ImmutableArray<HeddlePosition> Positions)
{
    /// <summary>The most rigid heddles reckoned with.</summary>
    public const int MostHeddles = 4;

    /// <summary>Heddles.</summary>
    public int Heddles => Positions.Length;

    /// <summary>Number of the group of slot ends.</summary>
    public int SlotGroup => Heddles + 1;

    /// <summary>Levels at which ends lie: 1 is no shed, 2 a clear one, 3 two sheds at once.</summary>
    public int Levels => Positions.Append(HeddlePosition.Rest).Distinct().Count();

    /// <summary>Whether there is one clear opening.</summary>
    public bool IsClear => Levels == 2;

    /// <summary>The groups on the upper level.</summary>
    /// <exception cref="InvalidOperationException">There is no clear shed.</exception>
    public ShaftSet Raised
    {
        get
        {
            if (!IsClear) throw new InvalidOperationException($"{this} has {Levels} levels, not two.");
            HeddlePosition upper = Positions.Contains(HeddlePosition.Up) ? HeddlePosition.Up : HeddlePosition.Rest;
            int[] raised = [.. Positions.Append(HeddlePosition.Rest).Select((p, i) => p == upper ? i + 1 : 0).Where(g => g > 0)];
            return ShaftSet.Of(raised);
        }
    }

    /// <summary>The one way to raise a set of groups.</summary>
    /// <param name="heddles">Heddles, 1 to <see cref="MostHeddles"/>.</param>
    /// <param name="raised">Groups to raise: heddle numbers, and heddles + 1 for the slot ends; neither none nor all.</param>
    /// <exception cref="ArgumentOutOfRangeException">The set is empty, or holds every group, or a group that is not there.</exception>
    public static RigidHeddleShed Raising(int heddles, ShaftSet raised)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(heddles, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(heddles, MostHeddles);
        if (raised.Count == 0 || raised.Count > heddles || raised.Max > heddles + 1)
        {
            throw new ArgumentOutOfRangeException(nameof(raised), raised, $"A shed of {heddles} heddles raises some, not all, of groups 1 to {heddles + 1}.");
        }

        bool withSlots = raised.Contains(heddles + 1);
        return new RigidHeddleShed(
        [
            .. Enumerable.Range(1, heddles).Select(h => (withSlots, raised.Contains(h)) switch
            {
                (false, true) => HeddlePosition.Up,
                (true, false) => HeddlePosition.Down,
                _ => HeddlePosition.Rest,
            }),
        ]);
    }

    /// <summary>Every way to hold a number of heddles.</summary>
    /// <param name="heddles">Heddles, 1 to <see cref="MostHeddles"/>.</param>
    public static IEnumerable<RigidHeddleShed> All(int heddles)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(heddles, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(heddles, MostHeddles);
        HeddlePosition[] positions = [HeddlePosition.Rest, HeddlePosition.Up, HeddlePosition.Down];
        IEnumerable<ImmutableArray<HeddlePosition>> ways = [[]];
        for (int h = 0; h < heddles; h++) ways = ways.SelectMany(way => positions.Select(way.Add));
        return ways.Select(way => new RigidHeddleShed(way));
    }

    /// <inheritdoc />
    public bool Equals(RigidHeddleShed? other) => other is not null && Positions.SequenceEqual(other.Positions);

    /// <inheritdoc />
    public override int GetHashCode() => Positions.Aggregate(17, (hash, p) => HashCode.Combine(hash, p));

    /// <summary>For people, for example <c>heddle 1 up, heddle 2 rest</c>.</summary>
    public override string ToString() => Heddles == 1
        ? $"heddle {Word(Positions[0])}"
        : string.Join(", ", Positions.Select((p, i) => $"heddle {i + 1} {Word(p)}"));

    private static string Word(HeddlePosition position) => position switch
    {
        HeddlePosition.Up => "up",
        HeddlePosition.Down => "down",
        _ => "at rest",
    };
}
