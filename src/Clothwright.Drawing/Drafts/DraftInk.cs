using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Colours;
using Clothwright.Core.Weaves;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Drafts;

/// <summary>Puts the marks of a draft where its layout says.</summary>
internal sealed partial class DraftInk
{
    private readonly Draft _draft;
    private readonly DraftColours _colours;
    private readonly DraftStyle _style;
    private readonly DraftLayout _at;
    private readonly TextStyle _cellText;
    private readonly TextStyle _numberText;
    private readonly List<Mark> _marks = [];

    public DraftInk(Draft draft, DraftColours colours, DraftStyle style, DraftLayout layout)
    {
        _draft = draft;
        _colours = colours;
        _style = style;
        _at = layout;
        _cellText = new TextStyle(FontFace.Strong, layout.Cell * 0.72f, Palette.Ink);
        _numberText = new TextStyle(FontFace.Text, Math.Max(4.5f, layout.Cell * 0.66f), Palette.ThinInk);
    }

    public Figure Draw()
    {
        DrawDrawdown();
        DrawThreading();
        if (!_at.IsLiftPlan) DrawTieUp();
        DrawTreadling();
        DrawColourBars();
        DrawNumbers();
        DrawBrackets();
        string name = _draft.Name.Length == 0 ? "Draft" : _draft.Name;
        string title = $"{name}: {_draft.Ends} ends, {_draft.Picks} picks, {_draft.Shafts} shafts"
            + (_at.IsLiftPlan ? ", lift plan" : $", {_draft.Treadles} treadles");
        return new Figure(_at.Width, _at.Height, title, [.. _marks]);
    }

    private void DrawDrawdown()
    {
        var warp = new List<Box>();
        var weft = new List<Box>();
        var byColour = new Dictionary<(bool Warp, SrgbColour Colour), List<Box>>();
        bool threads = _style.Ink == DrawdownInk.Threads && !_colours.Ends.IsEmpty && !_colours.Picks.IsEmpty;
        for (int p = 0; p < _at.Picks.Slots.Length; p++)
        {
            int pick = _at.Picks.Slots[p].Thread;
            ShaftSet lift = _draft.Lift(pick);
            for (int e = 0; e < _at.Ends.Slots.Length; e++)
            {
                int end = _at.Ends.Slots[e].Thread;
                bool up = lift.Overlaps(_draft.Threading[end]) == _draft.RisingShed;
                List<Box> cells = up ? warp : weft;
                if (threads || _style.Areas is not null)
                {
                    (bool, SrgbColour) key = (up, AreaColour(up, pick, end) ?? (up ? _colours.End(end) : _colours.Pick(pick)));
                    if (!byColour.TryGetValue(key, out cells!)) byColour[key] = cells = [];
                }

                cells.Add(new Box(_at.EndX(e), _at.PickY(p), _at.Cell, _at.Cell));
            }
        }

        if (byColour.Count > 0)
        {
            foreach (((bool up, SrgbColour colour), List<Box> cells) in byColour.OrderBy(c => c.Key.Warp).ThenBy(c => c.Key.Colour.ToString(), StringComparer.Ordinal))
            {
                _marks.Add(new BoxesMark(up ? "warp" : "weft", [.. cells], colour, Palette.Ink, 0.2f));
            }
        }
        else
        {
            if (weft.Count > 0) _marks.Add(new BoxesMark("weft", [.. weft], Palette.Linen, Palette.LinenLine, 0.3f));
            if (warp.Count > 0) _marks.Add(new BoxesMark("warp", [.. warp], Palette.Woad, Palette.LinenLine, 0.3f));
        }
    }

    // Of clasped yarns the area where the clasped thread lies on top, the ground elsewhere.
    private SrgbColour? AreaColour(bool up, int pick, int end) => _style.Areas switch
    {
        null => null,
        { AlongPicks: var picks } when picks == up => Palette.Linen,
        { } areas => areas.IsFirst(pick, end) ? Palette.Woad : Palette.Weld,
    };

    private void DrawThreading()
    {
        DrawGrid("threading-grid", from e in Slots(_at.Ends) from s in Numbers(_at.Shafts) select new Box(_at.EndX(e), _at.ShaftY(s), _at.Cell, _at.Cell));
        for (int e = 0; e < _at.Ends.Slots.Length; e++)
        {
            foreach (int shaft in _draft.Threading[_at.Ends.Slots[e].Thread].Members()) Fill("threading", shaft, _at.EndX(e), _at.ShaftY(shaft));
        }
    }

    private void DrawTieUp()
    {
        DrawGrid("tie-up-grid", from f in Numbers(_at.Feet) from s in Numbers(_at.Shafts) select new Box(_at.FootX(f), _at.ShaftY(s), _at.Cell, _at.Cell));
        for (int foot = 1; foot <= _at.Feet; foot++)
        {
            foreach (int shaft in _draft.TieUp[foot - 1].Members()) Fill("tie-up", shaft, _at.FootX(foot), _at.ShaftY(shaft));
        }
    }

    private void DrawTreadling()
    {
        string name = _at.IsLiftPlan ? "lift" : "treadling";
        DrawGrid($"{name}-grid", from p in Slots(_at.Picks) from f in Numbers(_at.Feet) select new Box(_at.FootX(f), _at.PickY(p), _at.Cell, _at.Cell));
        for (int p = 0; p < _at.Picks.Slots.Length; p++)
        {
            int pick = _at.Picks.Slots[p].Thread;
            ShaftSet pressed = _at.IsLiftPlan ? _draft.LiftPlan[pick] : _draft.Treadling[pick];
            foreach (int foot in pressed.Members().Where(f => f <= _at.Feet)) Fill(name, foot, _at.FootX(foot), _at.PickY(p));
        }
    }

    private static IEnumerable<int> Slots(DraftAxis axis) => Enumerable.Range(0, axis.Slots.Length);

    private static IEnumerable<int> Numbers(int count) => Enumerable.Range(1, count);

    private void DrawGrid(string name, IEnumerable<Box> cells)
    {
        ImmutableArray<Box> boxes = [.. cells];
        if (!boxes.IsEmpty) _marks.Add(new BoxesMark(name, boxes, Palette.Paper, Palette.LinenLine, 0.3f));
    }

    private void Fill(string name, int number, float x, float y)
    {
        if (_style.Notation == CellNotation.Marks)
        {
            float inset = _at.Cell * 0.12f;
            _marks.Add(new BoxesMark(name, [new Box(x + inset, y + inset, _at.Cell - 2 * inset, _at.Cell - 2 * inset)], Palette.Ink));
            return;
        }

        TextStyle style = number < 10 ? _cellText : _cellText with { Size = _at.Cell * 0.58f };
        _marks.Add(new LabelMark(name, number.ToString(CultureInfo.InvariantCulture), x + _at.Cell / 2, y + _at.Cell / 2 + style.Size * 0.36f, LabelAlign.Middle, style));
    }
}
