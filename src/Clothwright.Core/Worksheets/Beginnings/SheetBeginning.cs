using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Worksheets.Beginnings;

/// <summary>What a weaver says at the beginning; a whole worksheet follows from it.</summary>
public sealed record SheetBeginning
{
    /// <summary>Name of the work.</summary>
    public required string Title { get; init; }

    /// <summary>Name of the piece.</summary>
    public required string PieceName { get; init; }

    /// <summary>What it is to be.</summary>
    public PieceKind Kind { get; init; } = PieceKind.Scarf;

    /// <summary>How many alike, from 1.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Width when washed; null for what is usual.</summary>
    public Length? Width { get; init; }

    /// <summary>Length when washed; null for what is usual.</summary>
    public Length? Length { get; init; }

    /// <summary>Yarns that may be used, the most welcome first; at least one. The first is the warp, the second, where there is one, the weft.</summary>
    public required ImmutableArray<YarnEntry> Yarns { get; init; }

    /// <summary>Looms at hand; none for the looms that most begin with.</summary>
    public ImmutableArray<LoomEntry> Looms { get; init; } = [];

    /// <summary>Reeds at hand.</summary>
    public ImmutableArray<Reed> Reeds { get; init; } = [];

    /// <summary>Rigid heddles at hand.</summary>
    public ImmutableArray<RigidHeddle> Heddles { get; init; } = [];

    /// <summary>The loom that is wanted, by its id; null for the first that holds the work.</summary>
    public string? LoomId { get; init; }

    /// <summary>A draft to weave; null for a weave that suits piece and loom.</summary>
    public Draft? Draft { get; init; }

    /// <summary>Units in which she reads.</summary>
    public UnitStyle Units { get; init; } = UnitStyle.Metric;

    /// <summary>Currency of prices: three letters of ISO 4217.</summary>
    public string Currency { get; init; } = "EUR";

    /// <summary>The worksheet that follows: on the first loom, the narrowest first, on which it can be planned with nothing to settle; else on the first on which it can be planned.</summary>
    /// <exception cref="InvalidOperationException">There is no yarn.</exception>
    public Worksheet Compose()
    {
        if (Yarns.IsDefaultOrEmpty) throw new InvalidOperationException("A worksheet begins with a yarn.");
        ImmutableArray<LoomEntry> looms = Looms.IsEmpty ? LoomModels.Looms : Looms;
        LoomEntry[] wanted = [.. looms.OrderBy(l => l.WeavingWidth).Where(l => LoomId is null || l.Id == LoomId)];
        Worksheet? planned = null;
        foreach (LoomEntry loom in wanted)
        {
            Worksheet sheet = Settled(On(loom, looms));
            if (!sheet.Plan().TryGet(out PlanResult? plan)) continue;
            if (plan.Warnings.IsEmpty) return sheet;
            planned ??= sheet;
        }

        return planned ?? On(wanted.Length > 0 ? wanted[^1] : looms[0], looms);
    }

    /// <summary>The yarn of a shelf with which the work can be planned and of which there is enough; else the one of which there is most.</summary>
    /// <param name="shelf">Yarns that are told apart by what is left of them; at least one.</param>
    public YarnEntry MostSuited(ImmutableArray<YarnEntry> shelf)
    {
        YarnEntry[] byMass = [.. shelf.OrderByDescending(MassAtHand).Take(MostTried)];
        if (byMass.Length == 0) throw new ArgumentException("The shelf is empty.", nameof(shelf));
        string loom = (this with { Yarns = [byMass[0]] }).Compose().LoomId;
        foreach (YarnEntry yarn in byMass)
        {
            Worksheet sheet = (this with { Yarns = [yarn], LoomId = loom }).Compose();
            if (sheet.Plan().TryGet(out PlanResult? plan) && plan.Yarns.All(y => y.Packages.Missing.Grams <= 0)) return yarn;
        }

        return byMass[0];
    }

    // Each trial is a whole plan.
    private const int MostTried = 6;

    private static double MassAtHand(YarnEntry yarn) => yarn.Packages.Sum(p => p.GrossMass.Grams - p.Tare.Grams);

    // An edge that would hang loose gets floating selvedges.
    private static Worksheet Settled(Worksheet sheet) =>
        sheet.Plan().TryGet(out PlanResult? plan) && plan.Warnings.Any(w => w.Id == "loose-selvedge") ? sheet with { FloatingSelvedges = true } : sheet;

    private Worksheet On(LoomEntry loom, ImmutableArray<LoomEntry> looms)
    {
        PieceModel model = PieceModel.Of(Kind);
        bool given = !Looms.IsEmpty;
        WeaveDecision weave = Draft is not null ? new WeaveDecision.Drawn(Draft) : new WeaveDecision.Named(WeaveFor(loom, model));
        return new Worksheet
        {
            Title = Title,
            Units = Units,
            Currency = Currency,
            Looms = looms,
            Reeds = given ? Reeds : LoomModels.Reeds,
            Heddles = given ? Heddles : LoomModels.Heddles,
            Shelf = Yarns,
            LoomId = loom.Id,
            Weave = weave,
            Purpose = model.Purpose,
            Warp = WarpOrder.Of(Yarns[0].Id),
            Sample = Quantities.Length.FromCentimetres(15),
            Pieces = [new PieceEntry(PieceOf(model))],
        };
    }

    private Piece PieceOf(PieceModel model) => new()
    {
        Name = PieceName,
        Kind = Kind,
        Count = Count,
        Width = Width ?? model.Width,
        Length = Length ?? model.Length,
        Fringe = model.Fringe,
        FringeLength = model.FringeLength,
        Hem = model.Hem,
        EndSeam = model.EndSeam,
        Join = model.Join,
        Wearer = model.Wearer,
        Weft = [new WeftRun(Yarns[Math.Min(1, Yarns.Length - 1)].Id, 1)],
    };

    // Twill drapes and needs four shafts; what is to be firm, or is woven on two, is plain. Common practice, no source.
    private static string WeaveFor(LoomEntry loom, PieceModel model) =>
        loom.Shafts >= 4 && model.Purpose == Setts.ClothPurpose.Drape ? "2/2 twill" : "plain";
}
