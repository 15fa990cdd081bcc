namespace Clothwright.Core.Weaves.Faults;

/// <summary>Some crossings are marked as wrong: each of them must change.</summary>
internal sealed class MarkedCloth : ClothToExplain
{
    private readonly Drawdown _right;
    private readonly Drawdown _marks;

    public MarkedCloth(Drawdown right, IReadOnlySet<(int Pick, int End)> marks)
        : base(right.Ends, right.Picks)
    {
        _right = right;
        _marks = Drawdown.From(right.Ends, right.Picks, (pick, end) => marks.Contains((pick, end)));
    }

    public override ulong Wrong(int pick, int word, ulong woven) => _marks.Row(pick)[word] & ~(_right.Row(pick)[word] ^ woven);

    public override ulong Extra(int pick, int word, ulong woven) => ~_marks.Row(pick)[word] & (_right.Row(pick)[word] ^ woven);
}
