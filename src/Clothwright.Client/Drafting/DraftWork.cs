using System.Collections.Immutable;
using Clothwright.Client.Sheet;
using Clothwright.Core.Looms;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Editing;
using Clothwright.Core.Weaves.Fitting;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Worksheets;

namespace Clothwright.Client.Drafting;

/// <summary>The weave of the worksheet as a draft that is worked on by hand.</summary>
public sealed partial class DraftWork
{
    // So much cloth is seen that it can be judged, however short the repeat.
    private const int LeastEnds = 60;
    private const int LeastPicks = 32;

    private readonly Desk _desk;
    private WeaveDecision? _read;
    private bool _readLifts;
    private Weave _weave = null!;
    private Draft _draft = null!;
    private Drawdown? _cloth;
    private string _yarn = "";

    /// <summary>Begins work on the worksheet that lies on a desk.</summary>
    /// <param name="desk">The desk.</param>
    public DraftWork(Desk desk) => _desk = desk;

    /// <summary>Whether a lift plan is wanted in place of tie-up and treadling; null: as the loom has it.</summary>
    public bool? WantsLifts { get; set; }

    /// <summary>Whether an end may be on several shafts, and a pick press several treadles.</summary>
    public bool Several { get; set; }

    /// <summary>The yarn that is laid in the colours, by its id.</summary>
    public string Yarn
    {
        get => Worksheet.Shelf.Any(y => y.Id == _yarn) ? _yarn : Worksheet.Shelf[0].Id;
        set => _yarn = value;
    }

    /// <summary>The piece whose weft is shown, 0-based.</summary>
    public int Piece { get; set; }

    /// <summary>What dragging does.</summary>
    public DraftHand Hand { get; set; }

    /// <summary>The cell under the cursor.</summary>
    public DeskPlace Cursor { get; private set; } = new(DeskPart.Threading, 0, 1);

    /// <summary>The threads that are marked; null for none.</summary>
    public DeskMarks? Marked { get; private set; }

    /// <summary>Cloth that was painted and that the loom cannot weave as it is; null when there is none.</summary>
    public PaintedCloth? Sketch { get; private set; }

    /// <summary>Why the last thing asked for could not be done; null if it was.</summary>
    public InputProblem? Problem { get; private set; }

    /// <summary>The weave.</summary>
    public Weave Weave
    {
        get
        {
            Read();
            return _weave;
        }
    }

    /// <summary>Its draft, one repeat, with tie-up and treadling or with a lift plan.</summary>
    public Draft Draft
    {
        get
        {
            Read();
            return _draft;
        }
    }

    /// <summary>The cloth, one repeat; as painted where that is not woven yet.</summary>
    public Drawdown Cloth
    {
        get
        {
            // With a lift plan or with treadles, the cloth is the same.
            Draft draft = Draft;
            return Sketch?.Cloth ?? (_cloth ??= Drawn()?.Cloth ?? draft.Drawdown());
        }
    }

    /// <summary>Whether the draft has a lift plan.</summary>
    public bool Lifts => !Draft.LiftPlan.IsEmpty;

    /// <summary>The part of the draft beside the cloth.</summary>
    public DraftPart Treads => Lifts ? DraftPart.LiftPlan : DraftPart.Treadling;

    /// <summary>The loom that is chosen.</summary>
    public Loom Loom => _desk.Worksheet.Looms.First(l => l.Id == _desk.Worksheet.LoomId).ToLoom();

    /// <summary>Ends shown: whole repeats, so many that cloth is seen.</summary>
    public int ShownEnds => Shown(Cloth.Ends, WarpThreads.Length, LeastEnds);

    /// <summary>Picks shown.</summary>
    public int ShownPicks => Shown(Cloth.Picks, WeftThreads.Length, LeastPicks);

    private Worksheet Worksheet => _desk.Worksheet;

    /// <summary>Takes another draft.</summary>
    /// <param name="draft">The draft, one repeat.</param>
    /// <param name="run">Changes of one run make one step; null for a step of its own.</param>
    /// <param name="keepName">Whether the draft's own name is taken; otherwise a drawn draft keeps the name it has.</param>
    /// <returns>Whether it can be woven; if not, <see cref="Problem"/> says why.</returns>
    public bool Decide(Draft draft, string? run = null, bool keepName = false)
    {
        Parsed<Draft> sound = DraftCheck.Checked(draft with { WarpOrder = ThreadOrder.OneYarn, WeftOrder = ThreadOrder.OneYarn });
        Problem = sound.Problem;
        if (!sound.TryGet(out Draft? next)) return false;
        Sketch = null;
        string name = Worksheet.Weave is WeaveDecision.Named && !keepName ? "" : next.Name;
        _desk.Draw(Worksheet with { Weave = new WeaveDecision.Drawn(next with { Name = name }) { PatternPicks = PatternPicksOf(Weave) } }, run);
        return true;
    }

    /// <summary>Gives up what was painted and cannot be woven.</summary>
    public void GiveUpSketch()
    {
        Sketch = null;
        Problem = null;
    }

    /// <summary>Which picks of a weave are pattern picks: every second of a weave with a tabby ground; whatever else there is cannot be kept with a drawn draft.</summary>
    internal static PatternPicks PatternPicksOf(Weave weave)
    {
        bool Every(int rest) => weave.PickRoles.Select((role, pick) => (role == ThreadRole.Pattern) == (pick % 2 == rest)).All(as_ => as_);
        return weave.HasPatternPicks && Every(0) ? PatternPicks.Odd : weave.HasPatternPicks && Every(1) ? PatternPicks.Even : PatternPicks.None;
    }

    private static int Shown(int repeat, int order, int least)
    {
        int wanted = Math.Max(least, order <= 512 ? order : 0);
        return repeat * Math.Max(1, (wanted + repeat - 1) / repeat);
    }

    private void Read()
    {
        bool lifts = WantsLifts ?? Loom.Kind != LoomKind.Floor;
        if (ReferenceEquals(_read, Worksheet.Weave) && lifts == _readLifts) return;
        if (!ReferenceEquals(_read, Worksheet.Weave))
        {
            Sketch = null;
            _weave = Resolved() ?? _weave ?? WeaveCatalogue.Make("plain weave").Value;
        }

        (_read, _readLifts, _cloth) = (Worksheet.Weave, lifts, null);
        _draft = Form(_weave.Draft, lifts);
        Cursor = Kept(Cursor);
        if (Marked is { } marked) Marked = Kept(marked);
    }

    private Weave? Resolved()
    {
        if (Drawn() is { } drawn) return drawn.Weave;
        return Worksheet.Weave.Resolve().TryGet(out Weave? weave) ? weave : null;
    }

    private DrawnWeave? Drawn() => _desk.DrawnWeave is { } drawn && ReferenceEquals(drawn.Decision, Worksheet.Weave) ? drawn : null;

    private static Draft Form(Draft draft, bool lifts)
    {
        if (lifts) return draft.LiftPlan.IsEmpty ? draft.AsLiftPlan() : draft with { TieUp = [], Treadling = [] };
        if (draft.LiftPlan.IsEmpty) return draft;
        return draft.LiftPlan.Distinct().Count(l => l != ShaftSet.None) <= DraftLimits.Treadles ? draft.AsTieUp() : draft with { TieUp = [], Treadling = [] };
    }
}
