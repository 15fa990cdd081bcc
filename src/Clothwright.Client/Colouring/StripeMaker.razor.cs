using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Client.Blanks;
using Clothwright.Client.Sheet;
using Clothwright.Core.Colours;
using Clothwright.Core.Colours.Stripes;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Microsoft.AspNetCore.Components;

namespace Clothwright.Client.Colouring;

/// <summary>An order of yarns for the warp or a weft: a passage, a series, by lot, or from a picture.</summary>
public partial class StripeMaker : SheetPart
{
    private const int MostThreads = 5000;
    private const int MostStripes = 80;
    private const int UsualPicks = 96;

    private ImmutableArray<string> _yarns = [];
    private ImmutableArray<LinearColour> _picture = [];
    private ImmutableArray<int> _laid = [];
    private InputProblem? _problem;

    // None of the manners: from a picture.
    private StripeManner? _manner = StripeManner.Passage;

    // Place of the piece whose weft it is; below 0 the warp.
    private int _part = -1;
    private int _threads;
    private int _stripes = 6;
    private int _least = 2;
    private int _widest = 16;
    private int _seed = 1;
    private bool _mirrored;
    private bool _upward;
    private bool _open;

    private int Part => _part < Worksheet.Pieces.Length ? _part : -1;

    private int Ends => Plan.Ends.PatternEnds;

    private string Order => _manner is null ? "stripes.of.picture" : "stripes.order";

    private IReadOnlyList<(StripeManner? Value, string Word)> Manners =>
        [.. Enum.GetValues<StripeManner>().Select(m => ((StripeManner?)m, Phrases[$"stripes.manner.{m}"])), (null, Phrases["stripes.manner.picture"])];

    private IReadOnlyList<(int Value, string Word)> Parts =>
        [(-1, Phrases["stripes.part.warp"]), .. Worksheet.Pieces.Select((p, i) => (i, Phrases.With("stripes.part.weft", ("piece", p.Piece.Name))))];

    private IEnumerable<(int Start, int Threads, int Yarn)> Runs
    {
        get
        {
            for (int start = 0; start < _laid.Length;)
            {
                int next = start + 1;
                while (next < _laid.Length && _laid[next] == _laid[start]) next++;
                yield return (start, next - start, _laid[start]);
                start = next;
            }
        }
    }

    private string Outcome => string.Join(", ", _yarns.Select((id, i) => (Id: id, Threads: _laid.Count(y => y == i))).GroupBy(y => y.Id)
        .Select(g => Phrases.With(Part < 0 ? "stripes.ends" : "stripes.picks", ("count", Number(g.Sum(y => y.Threads))), ("yarn", NameOf(g.Key))))) + ".";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private string NameOf(string yarn) => Worksheet.Shelf.FirstOrDefault(y => y.Id == yarn)?.Name ?? yarn;

    private string ColourOf(string yarn) => Worksheet.Shelf.FirstOrDefault(y => y.Id == yarn)?.Colour.ToString() ?? "transparent";

    private void Toggle()
    {
        _open = !_open;
        if (!_open) return;
        _yarns = [.. Worksheet.Shelf.Take(2).Select(y => y.Id)];
        if (_yarns.Length == 1) _yarns = [_yarns[0], _yarns[0]];
        _threads = Ends;
        _part = -1;
        LayOut();
    }

    private void AddYarn() => _yarns = _yarns.Add(Worksheet.Shelf.Select(y => y.Id).FirstOrDefault(id => !_yarns.Contains(id)) ?? _yarns[0]);

    private void TakePart(int part) => Alter(() =>
    {
        _part = part;
        _threads = part < 0 ? Ends : UsualPicks;
    });

    private InputProblem? TakeNumber(string text, int least, int most, Action<int> take)
    {
        Parsed<int> read = Reading.Whole(text, "stripes", least, most);
        if (read.TryGet(out int number)) Alter(() => take(number));
        return read.Problem;
    }

    // Every change is seen in the cloth at once.
    private void Alter(Action change)
    {
        change();
        LayOut();
        TryIt();
    }

    private void LayOut()
    {
        if (_yarns.Any(id => Worksheet.Shelf.All(y => y.Id != id))) _yarns = [.. _yarns.Select(id => Worksheet.Shelf.Any(y => y.Id == id) ? id : Worksheet.Shelf[0].Id)];
        _laid = _manner is { } manner
            ? new StripeOrder(manner, _yarns.Length, _threads) { Stripes = _stripes, Mirrored = _mirrored, Least = _least, Widest = _widest, Seed = (ulong)_seed }.Laid()
            : _picture.IsEmpty ? [] : PictureStripes.Laid(_picture, [.. _yarns.Select(id => Worksheet.Shelf.First(y => y.Id == id).Colour)], _threads);
        StateHasChanged();
    }

    private Task TakePictureAsync(ChangeEventArgs change) => ReadPictureAsync();

    private async Task ReadPictureAsync()
    {
        await ColouringScript.LoadAsync();
        double[] light = await ColouringScript.ReadAsync("stripes-picture", _upward);
        if (light.Length < 3) return;
        _picture = [.. light.Chunk(3).Select(c => new LinearColour(c[0], c[1], c[2]))];
        Alter(() => { });
    }

    private void TryIt()
    {
        if (_laid.IsEmpty) return;
        _problem = Desk.Try(Striped());
        StateHasChanged();
    }

    private void Take()
    {
        TryIt();
        if (_problem is null) Desk.TakeTried();
    }

    private Worksheet Striped()
    {
        if (Part < 0)
        {
            // What fills the warp stands once; what is shorter goes over and over.
            ImmutableArray<ThreadRun> runs = [.. Runs.Select(r => new ThreadRun(_yarns[r.Yarn], r.Threads))];
            return Worksheet with { Warp = new WarpOrder(runs) { Repeats = _threads < Ends } };
        }

        PieceEntry entry = Worksheet.Pieces[Part];
        int strands = entry.Piece.Weft[0].Strands;
        ImmutableArray<WeftRun> weft = [.. Runs.Select(r => new WeftRun(_yarns[r.Yarn], r.Threads) { Strands = strands })];
        return Worksheet with { Pieces = Worksheet.Pieces.SetItem(Part, entry with { Piece = entry.Piece with { Weft = weft } }) };
    }
}
