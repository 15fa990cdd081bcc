using Clothwright.Core.Weaves;
using Clothwright.Drawing.Figures;

namespace Clothwright.Drawing.Drafts;

/// <summary>Measures the parts of a draft drawing and says where each cell lies, in points.</summary>
internal sealed class DraftLayout
{
    private const float GapInCells = 0.9f;
    private const float BreakInCells = 1.1f;

    private readonly float[] _endOffsets;
    private readonly float[] _pickOffsets;
    private readonly float _left;
    private readonly float _top;
    private readonly float _footX;
    private readonly float _threadingY;

    public DraftLayout(Draft draft, DraftColours colours, DraftStyle style, DraftAxis ends, DraftAxis picks)
    {
        Ends = ends;
        Picks = picks;
        Shafts = draft.Shafts;
        IsLiftPlan = !draft.LiftPlan.IsEmpty;
        Feet = IsLiftPlan ? draft.Shafts : draft.Treadles;
        Cell = (float)(style.Cell.Millimetres / 25.4 * 72);
        TieUpRight = style.Orientation is DraftOrientation.AtTheLoom or DraftOrientation.TieUpUpperRight or DraftOrientation.TieUpLowerRight;
        ThreadingAbove = style.Orientation is DraftOrientation.AtTheLoom or DraftOrientation.TieUpUpperRight or DraftOrientation.TieUpUpperLeft;
        EndOneLeft = style.Orientation is DraftOrientation.AtTheLoom or DraftOrientation.TieUpUpperLeft or DraftOrientation.TieUpLowerLeft;
        FirstPickBottom = style.Orientation is DraftOrientation.AtTheLoom or DraftOrientation.TieUpLowerRight or DraftOrientation.TieUpLowerLeft;
        (_endOffsets, EndsLength) = Offsets(ends);
        (_pickOffsets, PicksLength) = Offsets(picks);

        float gap = GapInCells * Cell;
        EndBar = colours.Ends.IsEmpty ? 0 : Cell * 0.8f;
        PickBar = colours.Picks.IsEmpty ? 0 : Cell * 0.8f;
        float endNumbers = Cell * 1.1f;
        float pickNumbers = Cell * 2.2f;
        float endBrackets = ends.Brackets.IsEmpty ? 0 : Cell * 1.8f;
        float pickBrackets = picks.Brackets.IsEmpty ? 0 : Cell * 1.4f + LongestText(picks) * Cell * 0.36f;
        float shaftNames = Cell * 3.4f;
        float footNames = Cell * 1.2f;
        float endSide = endNumbers + endBrackets + (EndBar > 0 ? EndBar + Cell * 0.4f : 0);
        float shaftsHeight = Shafts * Cell;
        float feetWidth = Feet * Cell;
        float pickSide = (PickBar > 0 ? Cell * 0.4f + PickBar : 0) + pickNumbers + pickBrackets;

        // Across: shaft names or pick numbers outside, drawdown and treadling within.
        float right = gap + feetWidth + pickSide;
        Width = shaftNames + EndsLength + right;
        _left = TieUpRight ? shaftNames : right;
        _footX = TieUpRight ? _left + EndsLength + gap : _left - gap - feetWidth;

        // Down: brackets, numbers and colours of the ends outside the threading; the drawdown on its other side.
        float outer = Math.Max(endSide, footNames);
        Height = outer + shaftsHeight + gap + PicksLength + Cell * 0.2f;
        _threadingY = ThreadingAbove ? outer : PicksLength + gap + Cell * 0.2f;
        _top = ThreadingAbove ? outer + shaftsHeight + gap : Cell * 0.2f;
    }

    public DraftAxis Ends { get; }

    public DraftAxis Picks { get; }

    public int Shafts { get; }

    public int Feet { get; }

    public bool IsLiftPlan { get; }

    public float Cell { get; }

    public float Width { get; }

    public float Height { get; }

    public float EndsLength { get; }

    public float PicksLength { get; }

    public float EndBar { get; }

    public float PickBar { get; }

    public bool TieUpRight { get; }

    public bool ThreadingAbove { get; }

    public bool EndOneLeft { get; }

    public bool FirstPickBottom { get; }

    /// <summary>Left edge of the column of an end.</summary>
    public float EndX(int slot) => EndOneLeft ? _left + _endOffsets[slot] : _left + EndsLength - _endOffsets[slot] - Cell;

    /// <summary>Upper edge of the row of a pick.</summary>
    public float PickY(int slot) => FirstPickBottom ? _top + PicksLength - _pickOffsets[slot] - Cell : _top + _pickOffsets[slot];

    /// <summary>Upper edge of the row of a shaft; shaft 1 lies next to the drawdown.</summary>
    public float ShaftY(int shaft) => ThreadingAbove ? _threadingY + (Shafts - shaft) * Cell : _threadingY + (shaft - 1) * Cell;

    /// <summary>Left edge of the column of a treadle, or of a shaft in a lift plan; number 1 lies next to the drawdown.</summary>
    public float FootX(int foot) => TieUpRight ? _footX + (foot - 1) * Cell : _footX + (Feet - foot) * Cell;

    /// <summary>The threading as one box.</summary>
    public Box ThreadingBox => new(_left, _threadingY, EndsLength, Shafts * Cell);

    /// <summary>The drawdown as one box.</summary>
    public Box DrawdownBox => new(_left, _top, EndsLength, PicksLength);

    /// <summary>The tie-up as one box.</summary>
    public Box TieUpBox => new(_footX, _threadingY, Feet * Cell, Shafts * Cell);

    /// <summary>Treadling or lift plan as one box.</summary>
    public Box TreadlingBox => new(_footX, _top, Feet * Cell, PicksLength);

    /// <summary>How many slots of an axis fit a length at every place of it; at least 4.</summary>
    public int SlotsThatFit(float length, DraftAxis axis)
    {
        int breaks = axis.Slots.Count(s => s.BreakAfter);
        float all = axis.Slots.Length * Cell + breaks * BreakInCells * Cell;
        return all <= length + 0.01f ? axis.Slots.Length : Math.Max(4, (int)((length - breaks * BreakInCells * Cell) / Cell));
    }

    private (float[] Offsets, float Length) Offsets(DraftAxis axis)
    {
        var offsets = new float[axis.Slots.Length];
        float at = 0;
        for (int i = 0; i < offsets.Length; i++)
        {
            offsets[i] = at;
            at += Cell;
            if (axis.Slots[i].BreakAfter && i < offsets.Length - 1) at += BreakInCells * Cell;
        }

        return (offsets, at);
    }

    private static int LongestText(DraftAxis axis) => axis.Brackets.Max(b => b.Text.Length);
}
