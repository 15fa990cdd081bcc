using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Faults;

/// <summary>What a slip does to the cloth.</summary>
/// <param name="Cloth">The cloth with the slip in it.</param>
/// <param name="Changed">Crossings that differ, 0-based pick and end; where a line is missing or doubled the rest is compared beyond it, and the line itself is listed whole.</param>
/// <param name="Before">Longest floats of the cloth as it should be.</param>
/// <param name="After">Longest floats with the slip.</param>
/// <param name="Looks">What to look for, in words.</param>
public sealed record SlipEffect(
    Drawdown Cloth, ImmutableArray<(int Pick, int End)> Changed, LongestFloats Before, LongestFloats After, string Looks)
{
    internal static SlipEffect Of(Drawdown right, Draft wrong, Slip slip)
    {
        if (wrong.Ends == 0 || wrong.Picks == 0)
        {
            throw new ArgumentException("With this slip nothing is left of the cloth.", nameof(slip));
        }

        Drawdown cloth = wrong.Drawdown();
        return new SlipEffect(cloth, [.. ChangedCrossings(right, cloth, slip)], LongestFloats.Of(right), LongestFloats.Of(cloth), LooksLike(slip));
    }

    private static IEnumerable<(int Pick, int End)> ChangedCrossings(Drawdown right, Drawdown wrong, Slip slip)
    {
        // A missing line is shown in the cloth as planned, a doubled one in the cloth as woven.
        (int picks, int ends) = (Math.Max(right.Picks, wrong.Picks), Math.Max(right.Ends, wrong.Ends));
        for (int pick = 0; pick < picks; pick++)
        {
            for (int end = 0; end < ends; end++)
            {
                bool differs = slip switch
                {
                    PickLeftOut or PickDoubled => pick == slip.Order.Place + (slip is PickDoubled ? 1 : 0),
                    EndLeftOut or EndDoubled => end == slip.Order.Place + (slip is EndDoubled ? 1 : 0),
                    _ => right[pick, end] != wrong[pick, end],
                };
                if (differs) yield return (pick, end);
            }
        }
    }

    private static string LooksLike(Slip slip) => slip.Kind switch
    {
        SlipKind.WrongHeddle => "A line along the cloth, its whole length: ends doubled or tripled beside it.",
        SlipKind.CrossedEnds => "A line two ends wide along the cloth; crossed ends also rub and block the shed.",
        SlipKind.EndLeftOut or SlipKind.EndDoubled => "A break in the figure along the cloth: everything to one side has moved over by one end.",
        SlipKind.MissedDent => "A streak in the spacing along the cloth; the interlacing is right.",
        SlipKind.WrongTreadle => "A line across the cloth, its whole width.",
        SlipKind.PickLeftOut => "A break in the figure across the cloth; floats may not show it.",
        SlipKind.PickDoubled => "A break across the cloth: two picks in one shed, and the turn pulls out at the edge.",
        _ => "A fault that repeats both ways: on each pick of the treadle, at each end of the shaft.",
    };
}
