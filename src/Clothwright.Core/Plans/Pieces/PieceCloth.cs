using Clothwright.Core.Cloths.Stages;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Layers;
using Clothwright.Core.Plans.Lengths;
using Clothwright.Core.Plans.Setting;
using Clothwright.Core.Plans.Wefts;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Structures;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Pieces;

/// <summary>How the cloth of one piece behaves between loom and wash: picks, take-up, draw-in, shrinkage.</summary>
internal sealed record PieceCloth
{
    private static readonly Rule HeldOpenRule = new(
        "ground picks between pattern picks", "ground picks = picks of the ground alone × share left by the pattern weft", Source.CommonPractice);

    private static readonly Derived<Ratio> HeldOpen = Derived.FromRange(
        "ground picks left where pattern picks lie between", Ratio.FromPercent(70), Ratio.FromPercent(90), Source.CommonPractice);

    public required Weave Weave { get; init; }

    public required WeftSystem Ground { get; init; }

    public required WeftSystem? Pattern { get; init; }

    public required ClothStages Stages { get; init; }

    /// <summary>Ground picks per length off tension, one layer.</summary>
    public required Derived<Sett> GroundPicks { get; init; }

    public required Derived<Ratio> WarpTakeUp { get; init; }

    public required Derived<Ratio> WarpTakeUpUnderTension { get; init; }

    public required Derived<Ratio> WeftTakeUp { get; init; }

    public required Derived<Ratio> DrawIn { get; init; }

    public required Derived<Ratio> ShrinkageInLength { get; init; }

    public required Derived<Ratio> ShrinkageInWidth { get; init; }

    /// <summary>Pattern picks for each ground pick; 0 without pattern.</summary>
    public double PatternPicksPerGroundPick => Pattern is null ? 0 : LayerWeave.PatternPicksPerGroundPick(Weave);

    /// <summary>Reckons the cloth of a piece.</summary>
    /// <param name="setting">What the warp gives.</param>
    /// <param name="index">The piece, 0-based.</param>
    /// <param name="ground">The weave without pattern picks.</param>
    public static PieceCloth Of(WarpSetting setting, int index, Drawdown ground)
    {
        PlanRequest request = setting.Request;
        Piece piece = request.Pieces[index];
        WeftSystem wefts = WeftSystem.Of(request, piece.Weft, $"pieces[{index}].weft");
        WeftSystem? pattern = piece.PatternWeft.IsDefaultOrEmpty ? null : WeftSystem.Of(request, piece.PatternWeft, $"pieces[{index}].patternWeft");
        Derived<Sett> picks = Picks(setting, piece, wefts.Threads, ground, pattern is not null);
        var stages = ClothStages.Of(new StagesQuestion
        {
            Warp = setting.Warp,
            Weft = wefts.Threads,
            Weave = ground,
            EndsInReed = setting.Sett,
            Picks = picks,
            ToBeFulled = piece.Fulled,
        });
        Allowances known = request.Allowances;
        Derived<Ratio> takeUp = Known("warp take-up", known.WarpTakeUp) ?? stages.WarpTakeUp;
        return new PieceCloth
        {
            Weave = piece.Weave ?? request.Weave,
            Ground = wefts,
            Pattern = pattern,
            Stages = stages,
            GroundPicks = picks,
            WarpTakeUp = takeUp,
            WarpTakeUpUnderTension = TensionRecovery.TakeUp(takeUp, stages.OnLoom.WarpTakeUp, stages.OffLoom.WarpTakeUp),
            WeftTakeUp = stages.WeftTakeUp,
            DrawIn = Known("draw-in", known.DrawIn) ?? stages.DrawIn,
            ShrinkageInLength = Known("shrinkage in length", known.ShrinkageInLength) ?? stages.LengthShrinkage,
            ShrinkageInWidth = Known("shrinkage in width", known.ShrinkageInWidth) ?? stages.WidthShrinkage,
        };
    }

    private static Derived<Ratio>? Known(string label, Ratio? measured) =>
        measured is { } value ? Derived.Given(label, value, Source.Measured) : null;

    private static Derived<Sett> Picks(WarpSetting setting, Piece piece, ThreadSystem weft, Drawdown ground, bool hasPattern)
    {
        if (piece.ChosenPicks is { } chosen) return Derived.Decision("ground picks", chosen);
        var advice = SettAdvice.For(new SettQuestion
        {
            Warp = setting.Warp,
            Weft = weft,
            Weave = ground,
            Purpose = setting.Request.Purpose,
            ToBeFulled = piece.Fulled,
        });
        Derived<Sett> alone = advice.PicksBeside(setting.Sett);
        return hasPattern ? Derived.From<Sett>("ground picks", HeldOpenRule, alone, HeldOpen, (n, share) => n * share) : alone;
    }
}
