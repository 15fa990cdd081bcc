using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Client.Blanks;
using Clothwright.Client.Sheet;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Editing;

namespace Clothwright.Client.Drafting;

/// <summary>The draft as a sheet of paper on which the weave is drawn.</summary>
public partial class DraftDesk : SheetPart
{
    private const string Canvas = "draft-canvas";
    private const string FileField = "draft-file";

    private DraftWork _work = null!;
    private DraftView _view = new(DraftWay.AtTheLoom, InNumbers: true, InYarns: false);
    private DraftFilesRow? _files;
    private bool _wide;
    private bool _open;
    private bool _reveal;
    private string _said = "";
    private ShownDraft? _shown;
    private ShownMarks? _shownMarks;
    private ShownColours? _colours;

    private string Description => Phrases.With(
        "draft.sheet",
        ("weave", _work.Weave.Name),
        ("ends", Number(_work.Draft.Ends)),
        ("picks", Number(_work.Draft.Picks)),
        ("shafts", Number(_work.Draft.Shafts)));

    private IReadOnlyList<(DeskPart Value, string Word)> Parts =>
        [.. Enum.GetValues<DeskPart>().Where(p => p != DeskPart.TieUp || !_work.Lifts).Select(p => (p, Phrases[$"part.{PartKey(p)}"]))];

    /// <inheritdoc />
    protected override void OnInitialized()
    {
        base.OnInitialized();
        _work = new DraftWork(Desk);
        _said = Said();
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            await DraftScript.LoadAsync();
            DraftScript.Open(Canvas, FileField, Told);
            _open = true;
        }

        if (!_open) return;
        Draw();
        await LookOverAsync();
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private string PartKey(DeskPart part) => part == DeskPart.Treads && _work.Lifts ? "Lifts" : part.ToString();

    // Only what differs is handed over.
    private void Draw()
    {
        Drawdown cloth = _work.ClothInHand;
        var shown = new ShownDraft(_work.Draft, cloth, _work.ShownEnds, _work.ShownPicks, _view, Worksheet.Warp.Runs, _work.Entry.Piece, Worksheet.Shelf, _work.Weave.HasPatternPicks);
        if (shown != _shown)
        {
            _shown = shown;
            (int[] ends, int[] picks) = Colours(shown);
            bool sketched = !ReferenceEquals(cloth, _work.Cloth) || _work.Sketch is not null;
            DraftPaper.Show(Canvas, _work.Draft, cloth, shown.Ends, shown.Picks, DraftTurns.Of(_view.Way), _view.InNumbers, _view.InYarns, ends, picks, sketched);
        }

        var marks = new ShownMarks(_work.Cursor, _work.Marked, _troubles);
        if (marks == _shownMarks && !_reveal) return;
        _shownMarks = marks;
        DraftPaper.Mark(Canvas, marks.Cursor, marks.Marked, marks.Troubles, _reveal);
        _reveal = false;
    }

    // The colours of the threads stay the same while cells are drawn.
    private (int[] Ends, int[] Picks) Colours(ShownDraft shown)
    {
        if (_colours is { } known && known.For.HasColoursOf(shown)) return (known.Ends, known.Picks);
        Dictionary<string, int> colours = Worksheet.Shelf.ToDictionary(y => y.Id, y => DraftPaper.Number(y.Colour), StringComparer.Ordinal);
        int Colour(string yarn) => colours.GetValueOrDefault(yarn, DraftPaper.Number(new SrgbColour(0xE9, 0xE1, 0xCF)));
        int[] ends = [.. Enumerable.Range(0, shown.Ends).Select(e => Colour(_work.YarnOfEnd(e)))];
        int[] picks = [.. _work.YarnsOfPicks(shown.Picks).Select(Colour)];
        _colours = new ShownColours(shown, ends, picks);
        return (ends, picks);
    }

    private void Act(Action work, bool reveal = false)
    {
        work();
        _reveal |= reveal;
        Refresh();
    }

    private void Refresh()
    {
        _said = Said();
        StateHasChanged();
    }

    private void TakeHand(DraftHand hand)
    {
        _work.Hand = hand;
        Hand();
    }

    private void ToggleWide()
    {
        _wide = !_wide;
        Hand();
    }

    private void Hand() => DraftScript.Hand(Canvas, _work.Hand switch { DraftHand.Mark => "mark", DraftHand.Move => "move", _ => "draw" }, _wide);

    private void TakeView(DraftView view)
    {
        _view = view;
        Refresh();
    }

    private InputProblem? TakeThread(string text)
    {
        Parsed<int> read = Reading.Whole(text, "cursor", 1, _work.Threads(_work.Cursor.Part));
        if (read.TryGet(out int thread)) Act(() => _work.PointAt(_work.Cursor with { Thread = thread - 1 }), reveal: true);
        return read.Problem;
    }
}
