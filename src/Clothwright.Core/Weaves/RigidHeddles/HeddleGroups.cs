using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.RigidHeddles;

/// <summary>Shares the different ends of a draft out over heddle eyes and slots.</summary>
internal sealed class HeddleGroups
{
    private readonly int _heddles;
    private readonly ImmutableArray<int> _classOfEnd;
    private readonly ImmutableArray<int> _heddlesOfClass; // 0 for a class in the slots
    private readonly ImmutableArray<int> _firstHeddle;

    /// <param name="heddles">Heddles.</param>
    /// <param name="classOfEnd">Which kind of end each end is, from 0.</param>
    /// <param name="slots">The kinds that go in the slots.</param>
    public HeddleGroups(int heddles, ImmutableArray<int> classOfEnd, ulong slots)
    {
        _heddles = heddles;
        _classOfEnd = classOfEnd;
        int classes = classOfEnd.Max() + 1;
        int[] ends = new int[classes];
        foreach (int c in classOfEnd) ends[c]++;
        int[] eyes = [.. Enumerable.Range(0, classes).Where(c => ((slots >> c) & 1) == 0)];
        var shares = new int[classes];
        foreach (int c in eyes) shares[c] = 1;
        // Each heddle to spare goes to the kind of end that crowds its eyes most.
        for (int spare = eyes.Length; spare < heddles && eyes.Length > 0; spare++) shares[eyes.MaxBy(c => (double)ends[c] / shares[c])]++;
        var first = new int[classes];
        int next = 1;
        foreach (int c in eyes)
        {
            first[c] = next;
            next += shares[c];
        }

        _heddlesOfClass = [.. shares];
        _firstHeddle = [.. first];
        GreatestShare = eyes.Length == 0 ? 0 : eyes.Max(c => (double)ends[c] / shares[c]) / classOfEnd.Length;
    }

    /// <summary>Share of all ends that lie in the eyes of the fullest heddle: the smaller, the closer the sett can be.</summary>
    public double GreatestShare { get; }

    /// <summary>Group of each end.</summary>
    public ImmutableArray<int> OfEnds()
    {
        var seen = new int[_heddlesOfClass.Length];
        return [.. _classOfEnd.Select(c => _heddlesOfClass[c] == 0 ? _heddles + 1 : _firstHeddle[c] + seen[c]++ % _heddlesOfClass[c])];
    }

    /// <summary>The heddles whose eyes hold a kind of end; none for a kind in the slots.</summary>
    public ShaftSet HeddlesOf(int kind) => _heddlesOfClass[kind] == 0
        ? ShaftSet.None
        : ShaftSet.Of([.. Enumerable.Range(_firstHeddle[kind], _heddlesOfClass[kind])]);
}
