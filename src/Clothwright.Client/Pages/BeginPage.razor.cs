using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Client.Openings;
using Clothwright.Client.Saving;
using Clothwright.Client.Sheet;
using Clothwright.Client.Shelf;
using Clothwright.Client.Texts;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Worksheets;
using Clothwright.Core.Worksheets.Beginnings;
using Clothwright.Core.Yarns;
using Microsoft.AspNetCore.Components;

namespace Clothwright.Client.Pages;

/// <summary>Three ways to a whole worksheet in a few blanks.</summary>
public partial class BeginPage : ComponentBase
{
    private const int RestMilliseconds = 120;

    private readonly List<YarnEntry> _told = [];
    private SheetBeginning? _wish;
    private ImmutableArray<YarnEntry> _yarns = [];
    private YarnEntry? _inHand;
    private (int Warp, int Weft) _before;
    private int _warp;
    private int _weft;
    private int _strokes;
    private bool _choseYarn;
    private bool _keeps = true;
    private OpenedDraft? _draft;
    private Worksheet? _sheet;
    private Parsed<PlanResult> _plan;

    /// <summary>The way in: yarns, piece or draft.</summary>
    [SupplyParameterFromQuery(Name = "from")]
    public string? From { get; set; }

    [Inject]
    private Desk Desk { get; set; } = null!;

    [Inject]
    private StudioCalls Studio { get; set; } = null!;

    [Inject]
    private ShelfRoom Room { get; set; } = null!;

    [Inject]
    private NavigationManager Manager { get; set; } = null!;

    [Inject]
    private Phrases Phrases { get; set; } = null!;

    private string Way => From is not null && Ways.All.Contains(From) ? From : Ways.All[0];

    private ImmutableArray<YarnEntry> Yarns => _inHand is { } yarn ? _yarns.Add(yarn) : _yarns;

    /// <inheritdoc />
    protected override async Task OnInitializedAsync()
    {
        Materials materials = await Materials.ReadAsync(Studio);
        _yarns = materials.Yarns;
        Change(new SheetBeginning
        {
            Title = "",
            PieceName = "",
            Kind = PieceKind.Scarf,
            Yarns = _yarns,
            Looms = materials.Looms,
            Reeds = materials.Reeds,
            Heddles = materials.Heddles,
            Units = Desk.StudioUnits,
        });
    }

    private void Change(SheetBeginning wish)
    {
        bool other = _wish?.Kind != wish.Kind;
        string name = Phrases[$"one.{wish.Kind}"];
        _wish = wish with { PieceName = name, Title = Phrases.With("begin.title", ("piece", name)), Draft = Way == "draft" ? _draft?.Draft : null };
        if (other && !_choseYarn) SuggestYarn();
        Lay();
    }

    // Until she chooses: what the shelf has enough of, else an undyed yarn that suits the piece.
    private void SuggestYarn()
    {
        YarnEntry model = YarnModel.For(_wish!.Kind);
        if (_yarns.IsEmpty || _yarns.All(y => y.Packages.IsEmpty)) _yarns = [model with { Name = Phrases[$"begin.model.{model.Id}"] }, .. _yarns.Where(y => y.Id is not ("cotton" or "wool" or "lambswool"))];
        _warp = _weft = Math.Max(0, _yarns.IndexOf(_wish.MostSuited(_yarns)));
    }

    private void Lay()
    {
        if (_wish is null) return;
        ImmutableArray<YarnEntry> yarns = Yarns;
        ImmutableArray<YarnEntry> chosen = _warp == _weft ? [yarns[_warp]] : [yarns[_warp], yarns[_weft]];
        _sheet = (_wish with { Yarns = chosen }).Compose();
        _plan = _sheet.Plan();
        StateHasChanged();
    }

    private void Choose((int Warp, int Weft) chosen)
    {
        _choseYarn = true;
        (_warp, _weft) = chosen;
        Lay();
    }

    // The first yarn that is told is warp and weft, the next the weft: until she chooses otherwise.
    private void Tell(YarnEntry? yarn)
    {
        if (yarn is null && _inHand is null) return;
        if (yarn is null)
        {
            (_inHand, _warp, _weft) = (null, _before.Warp, _before.Weft);
        }
        else
        {
            if (_inHand is null)
            {
                _before = (_warp, _weft);
                _weft = _yarns.Length;
                if (_told.Count == 0) _warp = _weft;
            }

            _choseYarn = true;
            _inHand = yarn with { Id = ShelfId.Of(yarn.Name, id => _yarns.Any(y => y.Id == id)) };
        }

        _ = LaySoonAsync(++_strokes);
    }

    // Loom after loom is tried for a plan: the words come first, the plan follows when the hand rests.
    private async Task LaySoonAsync(int stroke)
    {
        StateHasChanged();
        await Task.Delay(RestMilliseconds);
        if (stroke == _strokes) Lay();
    }

    private void SetBeside()
    {
        if (_inHand is not { } yarn) return;
        _told.Add(yarn);
        (_yarns, _inHand) = (_yarns.Add(yarn), null);
        Lay();
    }

    private void TakeDraft(OpenedDraft draft)
    {
        _draft = draft;
        Change(_wish!);
    }

    private void UseUnits(UnitStyle units)
    {
        Desk.UseStudioUnits(units);
        if (_wish is { } wish) Change(wish with { Units = units });
    }

    private async Task BeginAsync()
    {
        Lay();
        if (_sheet is not { } sheet) return;
        PageScript.EndFirstVisit();
        SetBeside();
        string id = await Desk.BeginAsync(sheet);
        // A shelf that does not answer is no hindrance: the worksheet holds the yarn.
        if (_keeps) foreach (YarnEntry yarn in _told.Where(t => sheet.Shelf.Any(y => y.Id == t.Id))) await Room.KeepAsync(yarn, 0);
        Manager.NavigateTo($"sheets/{id}");
    }

    private string Text(IDerived figure) => Phrases.Told(FigureText.Of(figure.Working, _wish!.Units, _wish.Currency));

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
