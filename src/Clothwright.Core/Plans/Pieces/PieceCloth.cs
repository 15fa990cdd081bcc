using Clothwright.Core.Cloths;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Layers;
using Clothwright.Core.Plans.Lengths;
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

    public required ClothGeometry AtRest { get; init; }

    public required Derived<Sett> GroundPicks { get; init; }

    public required Derived<Ratio> TakeUpUnderTension { get; init; }

    public required Derived<Ratio> WarpTakeUp { get; init; }

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
        ThreadSystem weft = wefts.Threads;
        Derived<Sett> picks = Picks(setting, piece, weft, ground, pattern is not null);
        var question = new ClothQuestion { Warp = setting.Warp, Weft = weft, Weave = ground, Ends = setting.Sett, Picks = picks };
        ClothGeometry atRest = ClothGeometry.Of(question);
        Allowances known = request.Allowances;
        Derived<Ratio> takeUp = known.WarpTakeUp is { } t ? Derived.Given("warp take-up", t, Source.Measured) : atRest.WarpTakeUp;
        return new PieceCloth
        {
            Weave = piece.Weave ?? request.Weave,
            Ground = wefts,
            Pattern = pattern,
            AtRest = atRest,
            GroundPicks = picks,
            WarpTakeUp = takeUp,
            TakeUpUnderTension = TensionRecovery.TakeUp(takeUp, atRest.WarpShare),
            WeftTakeUp = atRest.WeftTakeUp,
            DrawIn = known.DrawIn is { } w ? Derived.Given("draw-in", w, Source.Measured) : Lengths.DrawIn.From(atRest.WeftTakeUp),
            ShrinkageInLength = WashingShrinkage.Along("shrinkage in length", setting.Warp, known.ShrinkageInLength),
            ShrinkageInWidth = WashingShrinkage.Along("shrinkage in width", weft, known.ShrinkageInWidth),
        };
    }

    private static Derived<Sett> Picks(WarpSetting setting, Piece piece, ThreadSystem weft, Drawdown ground, bool hasPattern)
    {
        if (piece.ChosenPicks is { } chosen) return Derived.Decision("ground picks", chosen);
        SettAdvice advice = SettAdvice.For(new SettQuestion
        {
            Warp = setting.Warp,
            Weft = weft,
            Weave = ground,
            Purpose = setting.Request.Purpose,
        });
        Derived<Sett> alone = advice.PicksBeside(setting.Sett);
        return hasPattern ? Derived.From<Sett>("ground picks", HeldOpenRule, alone, HeldOpen, (n, share) => n * share) : alone;
    }
}
