using System.Globalization;
using Clothwright.Core.Weaves;

namespace Clothwright.Client.Drafting;

/// <content>What hand and keys tell, and what is said of it.</content>
public partial class DraftDesk
{
    private bool _following;

    private void Told(string words)
    {
        string[] said = words.Split(' ');
        switch (said[0])
        {
            case "press":
                _work.Press(Place(said, 1), said[4] == "1");
                break;
            case "over":
                _work.Over([.. Enumerable.Range(0, (said.Length - 1) / 2).Select(i => new DeskPlace(_work.Cursor.Part, Whole(said[1 + 2 * i]), Whole(said[2 + 2 * i])))]);
                break;
            case "point":
                _work.PointAt(Place(said, 1));
                break;
            case "lift":
                _work.Lift();
                break;
            case "drop":
                _work.Drop();
                break;
            case "key":
                if (!_work.Strike(said[1], said[2] == "1", said[3] == "1", DraftTurns.Of(_view.Way), DraftScript.PageOf(Canvas))) return;
                _reveal = true;
                break;
            case "file":
                _files?.Take();
                break;
        }

        _ = FollowAsync();
    }

    // The picture first; what stands around it follows when it has been painted.
    private async Task FollowAsync()
    {
        Draw();
        if (_following) return;
        _following = true;
        await PageScript.AfterPaintAsync();
        _following = false;
        Refresh();
    }

    private static DeskPlace Place(string[] said, int at) => new((DeskPart)Whole(said[at]), Whole(said[at + 1]), Whole(said[at + 2]));

    private static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    private string Said()
    {
        DeskPlace at = _work.Cursor;
        string place = at.Part switch
        {
            DeskPart.WarpColours => Phrases.With("said.WarpColours", ("thread", Number(at.Thread + 1)), ("yarn", YarnName(_work.YarnOfEnd(at.Thread)))),
            DeskPart.WeftColours => Phrases.With("said.WeftColours", ("thread", Number(at.Thread + 1)), ("yarn", YarnName(_work.YarnOfPick(at.Thread)))),
            DeskPart.Cloth => Phrases.With($"said.Cloth.{Filled(at)}", ("thread", Number(at.Thread + 1)), ("number", Number(at.Number + 1))),
            _ => Phrases.With($"said.{PartKey(at.Part)}.{Filled(at)}", ("thread", Number(at.Thread + 1)), ("number", Number(at.Number)), ("set", SetText(_work.SetAt(at)))),
        };
        return _work.Marked is { } marked
            ? Phrases.With("said.marked", ("place", place), ("count", Number(marked.Threads.Count * marked.Picks.Count)))
            : place;
    }

    private string Filled(DeskPlace place) => _work.IsFilled(place) ? "filled" : "empty";

    private string SetText(ShaftSet set) => set.Count == 0 ? Phrases["said.nothing"] : string.Join(", ", set.Members());

    private string YarnName(string id) => Worksheet.Shelf.FirstOrDefault(y => y.Id == id)?.Name ?? id;
}
