using System.Collections.Immutable;
using Clothwright.Core.Looms;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Setts.Reeds;
using Clothwright.Core.Weaves;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Setting;

/// <summary>The sett that is woven: decided or advised, as the reed or the rigid heddles at hand give it.</summary>
/// <param name="Advice">What was advised.</param>
/// <param name="Wanted">Ends per width wanted, one layer.</param>
/// <param name="Reed">The reed or heddles; null when the bench holds none that the loom takes.</param>
/// <param name="Sett">Ends per width in the reed, one layer.</param>
internal sealed record SettChoice(SettAdvice Advice, Derived<Sett> Wanted, ReedFit? Reed, Derived<Sett> Sett)
{
    // A sley without reed marks is preferred as long as it comes this near; the width gives way by as much.
    private const double NearEnough = 0.04;

    // An advised sett is the middle of a range: within it a clean sley this far off is still better than a marked one nearer.
    private const double NearEnoughInRange = 0.12;

    private static readonly Rule SleyRule = new("sett that the reed gives", "ends per width = dents per width × mean ends in a dent ÷ layers", Source.Derivation);

    /// <summary>Chooses.</summary>
    /// <param name="request">The decisions.</param>
    /// <param name="loom">The loom.</param>
    /// <param name="layers">Layers woven at once.</param>
    /// <param name="warp">Threads of the warp.</param>
    /// <param name="weft">Ground weft of the first piece.</param>
    /// <param name="ground">The weave without pattern picks.</param>
    /// <param name="fulled">Whether a piece is felted by hand.</param>
    public static SettChoice Of(PlanRequest request, Loom loom, int layers, ThreadSystem warp, ThreadSystem weft, Drawdown ground, bool fulled)
    {
        bool rigid = loom.Kind == LoomKind.RigidHeddle;
        ImmutableArray<Reed> reeds = rigid ? [] : request.Bench.Reeds;
        ImmutableArray<RigidHeddle> heddles = rigid ? request.Bench.Heddles : [];
        if (request.ChosenReed is { } name) (reeds, heddles) = Named(name, reeds, heddles, loom);
        HeddleUse use = HeddleUse.For(loom, request.Weave, layers);
        if (rigid) heddles = use.Enough(heddles, loom, request.Weave);
        var advice = SettAdvice.For(new SettQuestion
        {
            Warp = warp,
            Weft = weft,
            Weave = ground,
            Purpose = request.Purpose,
            Layers = layers,
            Width = request.Pieces.Max(p => p.Make == PieceMake.DoubleWidth ? p.Width / 2 : p.Width),
            ToBeFulled = fulled,
            Reeds = reeds,
            Heddles = heddles,
            HeddlesAtOnce = use.Sharing,
        });
        Derived<Sett> wanted = request.ChosenSett is { } chosen ? Derived.Decision("ends per width, as decided", chosen) : advice.Ends;
        ImmutableArray<ReedFit> fits = ReedFitting.Fits(wanted.Value * layers, reeds, heddles, use.Sharing);
        ReedFit? reed = Best([.. fits.Where(f => f.Heddles == 0 || use.Allows(f))], request.ChosenSett is null ? advice.EndsRange : null, layers);
        return new SettChoice(advice, wanted, reed, reed is null ? wanted : Given(reed, layers));
    }

    private static ReedFit? Best(ImmutableArray<ReedFit> fits, SettRange? advised, int layers) =>
        fits.FirstOrDefault(f => Clean(f, NearEnough))
        ?? fits.FirstOrDefault(f => advised is { } range && Clean(f, NearEnoughInRange) && range.Holds(f.Sett * (1.0 / layers)))
        ?? fits.FirstOrDefault();

    private static bool Clean(ReedFit fit, double near) => !fit.MarksLikely && Math.Abs(fit.Error.Value) <= near;

    // The wanted sett only leads to the sley; what is woven is what the sley gives, exactly.
    private static Derived<Sett> Given(ReedFit reed, int layers) => Derived.From<Sett>(
        "ends per width in the reed",
        SleyRule,
        [
            Derived.Decision($"dents of {reed.Name}", reed.Dents),
            Derived.Decision($"mean ends in a dent ({reed.Sley})", Number.FromValue(reed.Sley.MeanEndsPerDent)),
            Derived.Decision("layers", Whole.FromCount(layers)),
        ],
        v => v[0] * v[1] / v[2]);

    private static (ImmutableArray<Reed> Reeds, ImmutableArray<RigidHeddle> Heddles) Named(
        string name, ImmutableArray<Reed> reeds, ImmutableArray<RigidHeddle> heddles, Loom loom)
    {
        ImmutableArray<Reed> reed = [.. reeds.Where(r => r.Name == name)];
        ImmutableArray<RigidHeddle> heddle = [.. heddles.Where(h => h.Name == name)];
        if (!reed.IsEmpty || !heddle.IsEmpty) return (reed, heddle);
        string[] names = [.. reeds.Select(r => r.Name), .. heddles.Select(h => h.Name)];
        string kind = loom.Kind == LoomKind.RigidHeddle ? "rigid heddle" : "reed";
        throw new InputProblemException(new InputProblem(
            $"There is no {kind} \"{name}\" on the bench for {loom.Name}.",
            "reed",
            names.Length == 0 ? $"Put it on the bench under {(kind == "reed" ? "reeds" : "heddles")}." : $"Use one of: {string.Join(", ", names)}."));
    }
}
