using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Editing;
using Clothwright.Core.Weaves.Fitting;

namespace Clothwright.Client.Drafting;

/// <content>Drawing with pointer and pen.</content>
public sealed partial class DraftWork
{
    private readonly List<Crossing> _painted = [];
    private bool _stroke;
    private bool _marking;
    private bool _fill;
    private int _strokes;

    private string Run => $"draft stroke {_strokes}";

    /// <summary>A stroke begins.</summary>
    /// <param name="place">Where.</param>
    /// <param name="extend">Whether marks are carried on to here.</param>
    public void Press(DeskPlace place, bool extend)
    {
        Problem = null;
        _marking = extend || Hand == DraftHand.Mark;
        if (_marking)
        {
            MarkTo(place, afresh: !extend);
            return;
        }

        _desk.EndRun();
        _strokes++;
        _stroke = true;
        _painted.Clear();
        Cursor = Kept(place);
        _fill = !IsFilled(Cursor);
        Fill([Cursor]);
    }

    /// <summary>The stroke goes on over cells of the part in which it began.</summary>
    /// <param name="places">The cells, in the order in which it went.</param>
    public void Over(IReadOnlyList<DeskPlace> places)
    {
        if (places.Count == 0) return;
        if (_marking)
        {
            MarkTo(places[^1], afresh: false);
        }
        else if (_stroke)
        {
            Cursor = Kept(places[^1]);
            Fill(places);
        }
    }

    /// <summary>The stroke ends.</summary>
    public void Lift()
    {
        if (_stroke && _painted.Count > 0) Weaved(Cloth.Painted(_painted, _fill));
        _painted.Clear();
        (_stroke, _marking) = (false, false);
        _desk.EndRun();
    }

    /// <summary>The stroke is given up, as if it had not been begun.</summary>
    public void Drop()
    {
        if (_stroke) _desk.GiveUpRun();
        _painted.Clear();
        (_stroke, _marking) = (false, false);
    }

    /// <summary>The cloth as it is under the stroke that is being made.</summary>
    public Drawdown ClothInHand => _painted.Count == 0 ? Cloth : Cloth.Painted(_painted, _fill);

    /// <summary>Fills or empties the cell under the cursor.</summary>
    public void Toggle()
    {
        DeskPlace at = Cursor;
        Press(at, extend: false);
        Lift();
    }

    /// <summary>Takes a cloth: finds the draft that weaves it, or keeps it as a sketch and says why the loom cannot.</summary>
    /// <param name="cloth">One repeat.</param>
    public void Weaved(Drawdown cloth)
    {
        if (cloth.Equals(Draft.Drawdown()))
        {
            GiveUpSketch();
            return;
        }

        PaintedCloth found = PaintedCloth.For(Draft, cloth, LoomLimits.For(Loom));
        if (found.Draft is { } draft && Decide(draft)) return;
        Sketch = found;
    }

    private void Fill(IReadOnlyList<DeskPlace> places)
    {
        switch (Cursor.Part)
        {
            case DeskPart.Cloth:
                _painted.AddRange(places.Select(p => new Crossing(p.Number % Cloth.Picks, p.Thread % Cloth.Ends)));
                break;
            case DeskPart.WarpColours or DeskPart.WeftColours:
                LayYarn(Cursor.Part, places.Select(p => p.Thread), Run);
                break;
            default:
                DraftPart part = PartOf(Cursor.Part)!.Value;
                Draft next = Draft;
                bool alone = !Several && part is DraftPart.Threading or DraftPart.Treadling;
                foreach (DeskPlace place in places)
                {
                    int threads = next.Line(part).Length;
                    if (threads > 0) next = next.WithCell(part, place.Thread % threads, place.Number, _fill, alone);
                }

                if (!ReferenceEquals(next, Draft)) Decide(next, Run);
                break;
        }
    }
}
