using System.Globalization;
using Clothwright.Drawing.Figures;

namespace Clothwright.Drawing.Drafts;

/// <summary>What stands along the edges of a draft: colours, numbers, brackets.</summary>
internal sealed partial class DraftInk
{
    private const int NumberedThreads = 5;

    // Outer edge of the threading: away from the drawdown.
    private float OuterY => _at.ThreadingAbove ? _at.ThreadingBox.Y : _at.ThreadingBox.Y + _at.ThreadingBox.Height;

    private float Outward => _at.ThreadingAbove ? -1 : 1;

    // Outer edge of the treadling: away from the drawdown.
    private float OuterX => _at.TieUpRight ? _at.TreadlingBox.X + _at.TreadlingBox.Width : _at.TreadlingBox.X;

    private float Sideward => _at.TieUpRight ? 1 : -1;

    private void DrawColourBars()
    {
        if (_at.EndBar > 0)
        {
            float edge = OuterY + Outward * _at.Cell * 0.4f;
            float y = _at.ThreadingAbove ? edge - _at.EndBar : edge;
            foreach (var group in Slots(_at.Ends).GroupBy(e => _colours.End(_at.Ends.Slots[e].Thread)))
            {
                _marks.Add(new BoxesMark("end-colour", [.. group.Select(e => new Box(_at.EndX(e), y, _at.Cell, _at.EndBar))], group.Key, Palette.Ink, 0.25f));
            }
        }

        if (_at.PickBar > 0)
        {
            float edge = OuterX + Sideward * _at.Cell * 0.4f;
            float x = _at.TieUpRight ? edge : edge - _at.PickBar;
            foreach (var group in Slots(_at.Picks).GroupBy(p => _colours.Pick(_at.Picks.Slots[p].Thread)))
            {
                _marks.Add(new BoxesMark("pick-colour", [.. group.Select(p => new Box(x, _at.PickY(p), _at.PickBar, _at.Cell))], group.Key, Palette.Ink, 0.25f));
            }
        }
    }

    private void DrawNumbers()
    {
        float cell = _at.Cell;
        float size = _numberText.Size;
        float endEdge = OuterY + Outward * (cell * 0.3f + (_at.EndBar > 0 ? _at.EndBar + cell * 0.4f : 0));
        float endBaseline = _at.ThreadingAbove ? endEdge : endEdge + size * 0.72f;
        foreach (int e in Slots(_at.Ends))
        {
            int number = _at.Ends.Slots[e].Thread + 1;
            if (IsNumbered(_at.Ends, e)) Number("end-number", number, _at.EndX(e) + cell / 2, endBaseline, LabelAlign.Middle);
        }

        LabelAlign outward = _at.TieUpRight ? LabelAlign.Start : LabelAlign.End;
        float pickX = OuterX + Sideward * (cell * 0.4f + (_at.PickBar > 0 ? _at.PickBar + cell * 0.4f : 0));
        foreach (int p in Slots(_at.Picks))
        {
            if (IsNumbered(_at.Picks, p)) Number("pick-number", _at.Picks.Slots[p].Thread + 1, pickX, _at.PickY(p) + cell / 2 + size * 0.36f, outward);
        }

        float footBaseline = _at.ThreadingAbove ? OuterY - cell * 0.3f : OuterY + cell * 0.3f + size * 0.72f;
        if (_at.IsLiftPlan) footBaseline = _at.ThreadingAbove ? _at.TreadlingBox.Y - cell * 0.3f : _at.TreadlingBox.Y + _at.TreadlingBox.Height + cell * 0.3f + size * 0.72f;
        for (int foot = 1; foot <= _at.Feet; foot++)
        {
            Number(_at.IsLiftPlan ? "lift-number" : "treadle-number", foot, _at.FootX(foot) + cell / 2, footBaseline, LabelAlign.Middle);
        }

        DrawShaftNames();
    }

    // Beside each shaft its number and how many heddles the whole draft needs on it.
    private void DrawShaftNames()
    {
        float x = _at.TieUpRight ? _at.ThreadingBox.X - _at.Cell * 0.4f : _at.ThreadingBox.X + _at.ThreadingBox.Width + _at.Cell * 0.4f;
        for (int shaft = 1; shaft <= _at.Shafts; shaft++)
        {
            int heddles = _draft.Threading.Count(t => t.Contains(shaft));
            string text = string.Create(CultureInfo.InvariantCulture, $"{shaft} ({heddles})");
            _marks.Add(new LabelMark("shaft-name", text, x, _at.ShaftY(shaft) + _at.Cell / 2 + _numberText.Size * 0.36f, _at.TieUpRight ? LabelAlign.End : LabelAlign.Start, _numberText));
        }
    }

    private void DrawBrackets()
    {
        float cell = _at.Cell;
        float outer = OuterY + Outward * (cell * 1.25f + (_at.EndBar > 0 ? _at.EndBar + cell * 0.4f : 0));
        float tick = cell * 0.35f;
        foreach (AxisBracket bracket in _at.Ends.Brackets)
        {
            float a = _at.EndX(bracket.FirstSlot);
            float b = _at.EndX(bracket.LastSlot);
            float left = Math.Min(a, b);
            float right = Math.Max(a, b) + cell;
            float far = outer + Outward * tick;
            _marks.Add(new LinesMark("repeat-bracket", [[(left, outer), (left, far), (right, far), (right, outer)]], Palette.Madder, 0.7f));
            float baseline = _at.ThreadingAbove ? far - cell * 0.2f : far + cell * 0.2f + _numberText.Size * 0.72f;
            bool startsLeft = _at.EndOneLeft;
            _marks.Add(new LabelMark("repeat", bracket.Text, startsLeft ? left : right, baseline, startsLeft ? LabelAlign.Start : LabelAlign.End, _numberText with { Colour = Palette.Madder }));
        }

        float side = OuterX + Sideward * (cell * 2.4f + (_at.PickBar > 0 ? _at.PickBar + cell * 0.4f : 0));
        foreach (AxisBracket bracket in _at.Picks.Brackets)
        {
            float a = _at.PickY(bracket.FirstSlot);
            float b = _at.PickY(bracket.LastSlot);
            float top = Math.Min(a, b);
            float bottom = Math.Max(a, b) + cell;
            float far = side + Sideward * tick;
            _marks.Add(new LinesMark("repeat-bracket", [[(side, top), (far, top), (far, bottom), (side, bottom)]], Palette.Madder, 0.7f));
            float baseline = _at.FirstPickBottom ? bottom - cell * 0.2f : top + _numberText.Size;
            _marks.Add(new LabelMark("repeat", bracket.Text, far + Sideward * cell * 0.3f, baseline, _at.TieUpRight ? LabelAlign.Start : LabelAlign.End, _numberText with { Colour = Palette.Madder }));
        }

        DrawBreaks();
    }

    // A dashed line through the place where repeats are left out.
    private void DrawBreaks()
    {
        float half = _at.Cell * 0.55f;
        Box across = _at.DrawdownBox;
        for (int e = 0; e < _at.Ends.Slots.Length - 1; e++)
        {
            if (!_at.Ends.Slots[e].BreakAfter) continue;
            float x = _at.EndOneLeft ? _at.EndX(e) + _at.Cell + half : _at.EndX(e) - half;
            float top = Math.Min(across.Y, _at.ThreadingBox.Y);
            float bottom = Math.Max(across.Y + across.Height, _at.ThreadingBox.Y + _at.ThreadingBox.Height);
            _marks.Add(new LinesMark("break", [[(x, top), (x, bottom)]], Palette.Madder, 0.6f, Dashed: true));
        }

        for (int p = 0; p < _at.Picks.Slots.Length - 1; p++)
        {
            if (!_at.Picks.Slots[p].BreakAfter) continue;
            float y = _at.FirstPickBottom ? _at.PickY(p) - half : _at.PickY(p) + _at.Cell + half;
            float left = Math.Min(across.X, _at.TreadlingBox.X);
            float right = Math.Max(across.X + across.Width, _at.TreadlingBox.X + _at.TreadlingBox.Width);
            _marks.Add(new LinesMark("break", [[(left, y), (right, y)]], Palette.Madder, 0.6f, Dashed: true));
        }
    }

    // The first, the last, every fifth and the first after a break, but never two side by side.
    private static bool IsNumbered(DraftAxis axis, int slot)
    {
        int number = axis.Slots[slot].Thread + 1;
        bool nextToOther = slot > 0 && IsAnchor(axis, slot - 1) && !axis.Slots[slot - 1].BreakAfter;
        return !nextToOther && (IsAnchor(axis, slot) || (number % NumberedThreads == 0 && !NextIsAnchor(axis, slot)));
    }

    private static bool IsAnchor(DraftAxis axis, int slot) => slot == 0 || slot == axis.Slots.Length - 1 || (slot > 0 && axis.Slots[slot - 1].BreakAfter);

    private static bool NextIsAnchor(DraftAxis axis, int slot) => slot + 1 < axis.Slots.Length && IsAnchor(axis, slot + 1);

    private void Number(string name, int number, float x, float baseline, LabelAlign align) =>
        _marks.Add(new LabelMark(name, number.ToString(CultureInfo.InvariantCulture), x, baseline, align, _numberText));
}
