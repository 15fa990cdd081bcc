using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Fitting;

/// <summary>Which treadles could serve, and in which ways each wanted lift can be pressed with them.</summary>
/// <remarks>
/// To be chosen: as few candidates as possible such that every lift has a way of which all treadles are chosen.
/// The same form serves treadles that add up (rising, sinking, counterbalance), treadles that share out the shafts
/// (countermarche), and ends on several shafts (the roles of shafts and treadles exchanged).
/// </remarks>
/// <param name="Candidates">Treadles that could be tied.</param>
/// <param name="Ways">For each lift its ways; a way is a rising list of candidate indices.</param>
/// <param name="Feet">The most candidates in a way.</param>
/// <param name="Complete">Whether some best choice is sure to be among these; if not, a smaller one is not ruled out.</param>
public sealed partial record TieUpProblem(
    ImmutableArray<TreadleTie> Candidates,
    ImmutableArray<ImmutableArray<ImmutableArray<int>>> Ways,
    int Feet,
    bool Complete)
{
    /// <summary>A choice that is known to do, rising; empty where only the direct one is known.</summary>
    public ImmutableArray<int> Start { get; init; } = [];

    /// <summary>The fewest treadles by count alone: so many treadles have to give enough presses of at most <see cref="Feet"/>.</summary>
    public int FewestByCount
    {
        get
        {
            for (int treadles = 0; ; treadles++)
            {
                long presses = 0, choose = 1;
                for (int pressed = 1; pressed <= Math.Min(Feet, treadles); pressed++)
                {
                    choose = choose * (treadles - pressed + 1) / pressed;
                    presses += choose;
                }

                if (presses >= Ways.Length) return treadles;
            }
        }
    }

    /// <summary>The candidate that is a whole lift by itself, by lift.</summary>
    public int Direct(int lift)
    {
        foreach (ImmutableArray<int> way in Ways[lift])
        {
            if (way.Length == 1) return way[0];
        }

        throw new InvalidOperationException($"Lift {lift} has no treadle of its own among the candidates.");
    }
}
