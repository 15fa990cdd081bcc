using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Plain weave (tabby): every thread over one, under one.</summary>
public static class PlainWeave
{
    /// <summary>Warp is on top where pick and end are both odd or both even.</summary>
    public static Rule Rule { get; } = new("plain weave", "warp on top where pick number + end number is even", Source.Derivation);

    /// <summary>One repeat on a straight draw.</summary>
    /// <param name="shafts">Shafts, an even number from 2 to 64; more than 2 only share out the ends.</param>
    /// <exception cref="InputProblemException">The number of shafts is odd or out of range.</exception>
    public static Weave Of(int shafts = 2)
    {
        if (shafts is < 2 or > ShaftSet.Highest || shafts % 2 != 0)
        {
            throw new InputProblemException(new InputProblem(
                $"Plain weave on a straight draw of {shafts} shafts has no two even sheds.", "shafts", "Give an even number of shafts, for example 2 or 4."));
        }

        ShaftSet odd = ShaftSet.Of([.. Enumerable.Range(1, shafts).Where(s => s % 2 == 1)]);
        ShaftSet even = ShaftSet.Of([.. Enumerable.Range(1, shafts).Where(s => s % 2 == 0)]);
        return Weave.FromLifts("plain weave", Rule, DrawOrder.Straight(shafts), [odd, even]);
    }
}
