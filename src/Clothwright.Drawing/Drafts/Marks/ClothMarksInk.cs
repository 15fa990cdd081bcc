using System.Collections.Immutable;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Edges;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Layers;
using Clothwright.Drawing.Figures;
using Clothwright.Drawing.Fonts;

namespace Clothwright.Drawing.Drafts.Marks;

/// <summary>Marks in a drawn draft what a check of its cloth found: long floats, threads that nothing holds, layers, missed turns.</summary>
/// <remarks>Each kind has a sign of its own form, so that none is told by colour alone, and stands in the key.</remarks>
internal sealed class ClothMarksInk
{
    private readonly DraftLayout _at;
    private readonly ClothMarks _found;
    private readonly List<Mark> _marks = [];
    private readonly ILookup<int, int> _slotsOfEnd;
    private readonly ILookup<int, int> _slotsOfPick;

    private ClothMarksInk(DraftLayout at, ClothMarks found)
    {
        _at = at;
        _found = found;
        _slotsOfEnd = Enumerable.Range(0, at.Ends.Slots.Length).ToLookup(s => at.Ends.Slots[s].Thread);
        _slotsOfPick = Enumerable.Range(0, at.Picks.Slots.Length).ToLookup(s => at.Picks.Slots[s].Thread);
    }

    private float Cell => _at.Cell;

    /// <summary>The figure with the marks and their key.</summary>
    /// <param name="draft">The drawn draft.</param>
    /// <param name="at">Where its parts lie.</param>
    /// <param name="found">What is marked.</param>
    /// <param name="ends">Ends of the draft.</param>
    /// <param name="picks">Picks of the draft.</param>
    public static Figure On(Figure draft, DraftLayout at, ClothMarks found, int ends, int picks)
    {
        var ink = new ClothMarksInk(at, found);
        ink.Floats(ends, picks);
        ink.LooseThreads();
        ink.Layers();
        ink.Turns();
        return ClothMarksKey.Under(draft with { Marks = [.. draft.Marks, .. ink._marks] }, at, found);
    }

    /// <summary>A line along a float: through on the face, dashed on the back.</summary>
    public static IEnumerable<Mark> Line(string name, ImmutableArray<ImmutableArray<(float X, float Y)>> chains, float cell, bool back)
    {
        yield return new LinesMark(name + "-halo", chains, Palette.Paper, cell * 0.42f);
        yield return new LinesMark(name, chains, Palette.Madder, cell * 0.2f, Dashed: back);
    }

    /// <summary>A small triangle that points to the edge of the cloth.</summary>
    public static ImmutableArray<(float X, float Y)> Triangle(float x, float y, float cell, bool pointsRight)
    {
        float half = cell * 0.28f, length = pointsRight ? cell * 0.5f : -cell * 0.5f;
        return [(x, y - half), (x + length, y), (x, y + half), (x, y - half)];
    }

    private void Floats(int ends, int picks)
    {
        foreach (IGrouping<FloatKind, ThreadFloat> kind in _found.Floats.GroupBy(f => f.Kind))
        {
            bool warp = kind.Key is FloatKind.WarpFace or FloatKind.WarpBack;
            ImmutableArray<ImmutableArray<(float X, float Y)>> chains = [.. kind.SelectMany(f => warp ? Along(f, picks, _slotsOfEnd, _slotsOfPick) : Along(f, ends, _slotsOfPick, _slotsOfEnd))];
            if (!chains.IsEmpty) _marks.AddRange(Line(Name(kind.Key), chains, Cell, kind.Key is FloatKind.WarpBack or FloatKind.WeftBack));
        }
    }

    // A float may run over the edge of the repeat, or over threads that are left out: a chain for each stretch that is drawn.
    private IEnumerable<ImmutableArray<(float X, float Y)>> Along(ThreadFloat found, int crossed, ILookup<int, int> lines, ILookup<int, int> threads)
    {
        foreach (int line in lines[found.Line])
        {
            int[] slots = [.. Enumerable.Range(found.Start, found.Length).SelectMany(t => threads[t % crossed]).Distinct().Order()];
            for (int from = 0; from < slots.Length;)
            {
                int to = from;
                while (to + 1 < slots.Length && slots[to + 1] == slots[to] + 1) to++;
                yield return found.IsWarp ? Vertical(line, slots[from], slots[to]) : Horizontal(line, slots[from], slots[to]);
                from = to + 1;
            }
        }
    }

    private ImmutableArray<(float X, float Y)> Vertical(int end, int from, int to)
    {
        float x = _at.EndX(end) + Cell / 2, a = _at.PickY(from) + Cell / 2, b = _at.PickY(to) + Cell / 2;
        return [(x, Math.Min(a, b) - Cell * 0.3f), (x, Math.Max(a, b) + Cell * 0.3f)];
    }

    private ImmutableArray<(float X, float Y)> Horizontal(int pick, int from, int to)
    {
        float y = _at.PickY(pick) + Cell / 2, a = _at.EndX(from) + Cell / 2, b = _at.EndX(to) + Cell / 2;
        return [(Math.Min(a, b) - Cell * 0.3f, y), (Math.Max(a, b) + Cell * 0.3f, y)];
    }

    private static string Name(FloatKind kind) => kind switch
    {
        FloatKind.WarpFace => "float-warp-face",
        FloatKind.WarpBack => "float-warp-back",
        FloatKind.WeftFace => "float-weft-face",
        _ => "float-weft-back",
    };

    private void LooseThreads()
    {
        Box cloth = _at.DrawdownBox;
        ImmutableArray<Box> ends = [.. _found.LooseEnds.SelectMany(e => _slotsOfEnd[e]).Select(s => new Box(_at.EndX(s), cloth.Y, Cell, cloth.Height))];
        ImmutableArray<Box> picks = [.. _found.LoosePicks.SelectMany(p => _slotsOfPick[p]).Select(s => new Box(cloth.X, _at.PickY(s), cloth.Width, Cell))];
        foreach ((string name, ImmutableArray<Box> boxes) in new[] { ("loose-end", ends), ("loose-pick", picks) })
        {
            if (boxes.IsEmpty) continue;
            _marks.Add(new BoxesMark(name + "-halo", boxes, null, Palette.Paper, Cell * 0.4f));
            _marks.Add(new BoxesMark(name, boxes, null, Palette.Madder, Cell * 0.18f));
        }
    }

    // The letter of its layer beside each pick and end: A on top.
    private void Layers()
    {
        var style = new TextStyle(FontFace.Strong, Cell * 0.62f, Palette.Madder);
        float right = _at.DrawdownBox.X - Cell * 0.75f;
        float below = _at.DrawdownBox.Y + _at.DrawdownBox.Height + Cell * 0.7f;
        for (int layer = 0; layer < _found.Layers.Length; layer++)
        {
            ClothLayer cloth = _found.Layers[layer];
            string letter = ClothMarksKey.LayerLetter(layer);
            foreach (int slot in cloth.Picks.SelectMany(p => _slotsOfPick[p])) _marks.Add(new LabelMark("layer-of-pick", letter, right, _at.PickY(slot) + Cell / 2 + style.Size * 0.36f, LabelAlign.End, style));
            foreach (int slot in cloth.Ends.SelectMany(e => _slotsOfEnd[e])) _marks.Add(new LabelMark("layer-of-end", letter, _at.EndX(slot) + Cell / 2, below, LabelAlign.Middle, style));
        }
    }

    private void Turns()
    {
        Box cloth = _at.DrawdownBox;
        var chains = ImmutableArray.CreateBuilder<ImmutableArray<(float X, float Y)>>();
        foreach (MissedTurn missed in _found.Turns)
        {
            bool left = (missed.Turn.Side == ClothSide.Left) == _at.EndOneLeft;
            foreach (int slot in _slotsOfPick[missed.Turn.Pick % _found.PicksOfRepeat])
            {
                chains.Add(Triangle(left ? cloth.X - Cell * 0.62f : cloth.X + cloth.Width + Cell * 0.62f, _at.PickY(slot) + Cell / 2, Cell, pointsRight: left));
            }
        }

        if (chains.Count > 0) _marks.Add(new LinesMark("missed-turn", chains.ToImmutable(), Palette.Madder, Cell * 0.1f));
    }
}
