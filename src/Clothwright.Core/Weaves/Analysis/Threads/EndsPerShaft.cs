using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Analysis.Threads;

/// <summary>How many ends, and so how many heddles, each shaft carries.</summary>
/// <param name="Counts">Ends by shaft, shaft 1 first; an end on two shafts counts on both.</param>
public sealed record EndsPerShaft(ImmutableArray<int> Counts)
{
    /// <summary>Heddles in all.</summary>
    public int Heddles => Counts.Sum();

    /// <summary>Counts the ends on each shaft.</summary>
    /// <param name="draft">The draft at its full width.</param>
    public static EndsPerShaft Of(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var counts = new int[Math.Max(draft.Shafts, draft.ShaftsInUse.Max)];
        foreach (ShaftSet end in draft.Threading)
        {
            foreach (int shaft in end.Members()) counts[shaft - 1]++;
        }

        return new EndsPerShaft(ImmutableArray.Create(counts));
    }

    /// <summary>Shafts on which the loom has too few heddles, one problem each; none when the loom's heddles were not counted.</summary>
    /// <param name="loom">The loom.</param>
    public IEnumerable<InputProblem> Problems(Loom loom)
    {
        ArgumentNullException.ThrowIfNull(loom);
        if (loom.HeddlesPerShaft == 0) yield break;
        for (int shaft = 0; shaft < Counts.Length; shaft++)
        {
            int missing = Counts[shaft] - loom.HeddlesPerShaft;
            if (missing <= 0) continue;
            yield return new InputProblem(
                $"Shaft {shaft + 1} carries {Counts[shaft]} ends; {loom.Name} has {loom.HeddlesPerShaft} heddles a shaft.",
                $"threading, shaft {shaft + 1}",
                $"Hang {missing} more heddles on shaft {shaft + 1}, or share its ends with a shaft that is not in use.");
        }
    }
}
