using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Client.Openings;
using Clothwright.Client.Saving;
using Clothwright.Client.Sheet;
using Clothwright.Core.Colours;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.WeftChoice;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Microsoft.AspNetCore.Components;

namespace Clothwright.Client.Colouring;

/// <summary>Which weft serves this warp best, of the yarns of the worksheet and of the studio's shelf.</summary>
public partial class WeftFinder : SheetPart
{
    private const int MostTold = 6;

    private ImmutableArray<WeftProposal> _found = [];
    private ImmutableArray<YarnEntry> _shelf = [];
    private Worksheet? _lookedAt;
    private WantedWeft? _wanting;
    private WeftAimKind _aim;
    private SrgbColour _wanted = new(0x3b, 0x7a, 0x78);
    private InputProblem? _problem;
    private string _said = "";
    private int _piece;
    private int? _chosen;
    private int _search;
    private bool _pairs;
    private bool _open;
    private bool _looking;

    [Inject]
    private StudioCalls Studio { get; set; } = null!;

    private int Index => Math.Min(_piece, Worksheet.Pieces.Length - 1);

    private IReadOnlyList<(WeftAimKind Value, string Word)> Aims => [.. Enum.GetValues<WeftAimKind>().Select(a => (a, Phrases[$"weft.aim.{a}"]))];

    private void Dye(ChangeEventArgs change)
    {
        if (!SrgbColour.Parse(change.Value as string ?? "").TryGet(out SrgbColour colour)) return;
        _wanted = colour;
        Forget();
    }

    // What was found answers another question.
    private void Forget()
    {
        _search++;
        (_found, _chosen, _wanting, _problem, _said, _looking) = ([], null, null, null, "", false);
        Desk.LeaveTried();
        StateHasChanged();
    }

    private async Task LookAsync()
    {
        if (_looking) return;
        Forget();
        _looking = true;
        int search = _search;
        Worksheet asked = _lookedAt = Worksheet;
        ImmutableArray<YarnEntry> studio = (await Materials.ReadAsync(Studio)).Yarns;
        _shelf = [.. asked.Shelf, .. studio.Where(y => asked.Shelf.All(s => s.Id != y.Id))];
        if (!(asked with { Shelf = _shelf }).Plan().TryGet(out PlanResult? plan))
        {
            // What cannot be planned is told by the worksheet itself.
            (_said, _looking) = (Phrases["tally.stopped"], false);
            return;
        }

        var aim = new WeftAim(_aim, _aim == WeftAimKind.Colour ? _wanted : null);
        int all = WeftChooser.Count(plan, _pairs);
        List<WeftProposal> found = [];
        int seen = 0;
        foreach (WeftProposal? proposal in WeftChooser.Each(plan, Index, aim, _pairs))
        {
            if (proposal is not null) found.Add(proposal);
            _said = Phrases.With("weft.looking", ("seen", Number(++seen)), ("all", Number(all)));
            StateHasChanged();
            await PageScript.AfterPaintAsync();
            if (search != _search) return;
        }

        _found = WeftChooser.Ranked(found, aim, MostTold);
        _wanting = aim.Wanted is { } face ? WantedWeft.For(plan.Pieces[Index], face) : null;
        _said = Phrases.With("weft.done", ("seen", Number(seen)), ("told", Number(_found.Length)));
        _looking = false;
        StateHasChanged();
    }

    private void TryIt(int place)
    {
        _chosen = place;
        WeftProposal proposal = _found[place];
        PieceEntry entry = Worksheet.Pieces[Index];
        YarnEntry[] missing = [.. proposal.Yarns.Where(y => Worksheet.Shelf.All(s => s.Id != y.Id)).Select(y => _shelf.First(s => s.Id == y.Id))];
        _problem = Desk.Try(Worksheet with
        {
            Shelf = [.. Worksheet.Shelf, .. missing],
            Pieces = Worksheet.Pieces.SetItem(Index, entry with { Piece = entry.Piece with { Weft = proposal.Weft } }),
        });
    }

    private void Take()
    {
        if (_chosen is null || Desk.Tried is null) return;
        Desk.TakeTried();
        Forget();
        _said = Phrases["weft.taken"];
    }

    private static string Tenths(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
