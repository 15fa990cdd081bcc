using System.Numerics;
using Clothwright.Core.Weaves;

namespace Clothwright.Published.Tests.Weaves;

/// <summary>Small weaves as whole numbers, one bit a crossing, so that all of a size can be gone through.</summary>
internal static class WeaveCodes
{
    /// <summary>The weave with a number.</summary>
    public static Drawdown Cloth(int code, int picks, int ends) =>
        Drawdown.From(ends, picks, (pick, end) => Bit(code, pick, end, ends));

    /// <summary>Whether a weave has the lowest number among those that differ from it by shifts, and by reversals if asked.</summary>
    public static bool IsFirstOfItsShifts(int code, int picks, int ends, bool reversals)
    {
        for (int mirror = 0; mirror < (reversals ? 4 : 1); mirror++)
        {
            for (int pickShift = 0; pickShift < picks; pickShift++)
            {
                for (int endShift = 0; endShift < ends; endShift++)
                {
                    if (Moved(code, picks, ends, pickShift, endShift, (mirror & 1) != 0, (mirror & 2) != 0) < code) return false;
                }
            }
        }

        return true;
    }

    /// <summary>Every weave with as many warp crossings on each pick, and as many on each end, neither none nor all.</summary>
    public static IEnumerable<Drawdown> EqualSums(int picks, int ends)
    {
        for (int sum = 1; sum < ends; sum++)
        {
            int[] rows = [.. Enumerable.Range(0, 1 << ends).Where(r => BitOperations.PopCount((uint)r) == sum)];
            long choices = 1;
            for (int i = 0; i < picks; i++) choices *= rows.Length;
            for (long choice = 0; choice < choices; choice++)
            {
                var chosen = new int[picks];
                long rest = choice;
                for (int pick = 0; pick < picks; pick++, rest /= rows.Length) chosen[pick] = rows[rest % rows.Length];
                int[] sums = [.. Enumerable.Range(0, ends).Select(e => chosen.Count(r => ((r >> e) & 1) != 0)).Distinct()];
                if (sums.Length > 1 || sums[0] == 0 || sums[0] == picks) continue;
                yield return Drawdown.From(ends, picks, (pick, end) => ((chosen[pick] >> end) & 1) != 0);
            }
        }
    }

    private static int Moved(int code, int picks, int ends, int pickShift, int endShift, bool mirrorPicks, bool mirrorEnds)
    {
        int moved = 0;
        for (int pick = 0; pick < picks; pick++)
        {
            int fromPick = ((mirrorPicks ? picks - 1 - pick : pick) + pickShift) % picks;
            for (int end = 0; end < ends; end++)
            {
                int fromEnd = ((mirrorEnds ? ends - 1 - end : end) + endShift) % ends;
                if (Bit(code, fromPick, fromEnd, ends)) moved |= 1 << (pick * ends + end);
            }
        }

        return moved;
    }

    private static bool Bit(int code, int pick, int end, int ends) => ((code >> (pick * ends + end)) & 1) != 0;
}
