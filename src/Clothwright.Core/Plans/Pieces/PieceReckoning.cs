using System.Collections.Immutable;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Plans.Ends;
using Clothwright.Core.Plans.Lengths;
using Clothwright.Core.Plans.Needs;
using Clothwright.Core.Plans.Results;
using Clothwright.Core.Plans.Setting;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Plans.Pieces;

/// <summary>Reckons one piece on the ends it is woven on.</summary>
internal static class PieceReckoning
{
    private static readonly Rule PicksRule = new("picks", "picks = ground picks per length × length off the loom, rounded up, for each layer, and pattern picks between", Source.Derivation);

    private static readonly Rule UnderTensionRule = new("picks to count on the loom", "picks per length off tension × length off the loom ÷ length under tension", Source.Derivation);

    private static readonly Rule FinishedLengthRule = new("hems and seams", "finished length = cloth − 2 × hem − 2 × seam at the ends", Source.Derivation);

    private static readonly Rule FinishedWidthRule = new("seams and fold", "finished width = width of one layer × layers opened out − 2 × seam at the sides", Source.Derivation);

    private static readonly Rule MassRule = new("mass of the cloth", "sum of ends × warp in the woven part × mass per length, and of each weft in the cloth × mass per length", Source.Derivation);

    private static readonly Rule PerAreaRule = new("mass per area", "mass of the cloth ÷ (length × width of one layer × layers) after washing", Source.Derivation);

    /// <summary>Reckons a piece.</summary>
    /// <param name="setting">What the warp gives.</param>
    /// <param name="index">The piece, 0-based.</param>
    /// <param name="cloth">Its cloth.</param>
    /// <param name="lengths">Its lengths.</param>
    /// <param name="ends">Ends it is woven on.</param>
    /// <param name="warpYarns">How many of these ends are of each yarn.</param>
    public static PiecePlan Of(
        WarpSetting setting, int index, PieceCloth cloth, PieceLengths lengths, Derived<Whole> ends, IReadOnlyList<(Yarn Yarn, int Ends)> warpYarns)
    {
        Piece piece = setting.Request.Pieces[index];
        Derived<Length> reedWidth = EndsReckoning.ReedWidth(ends, setting.Sett, setting.Layers);
        Derived<Length> offLoomWidth = DrawIn.ClothWidthOf(reedWidth, cloth.DrawIn);
        Derived<Length> washedWidth = FinishingShrinkage.After("width of one layer, washed", offLoomWidth, cloth.ShrinkageInWidth);
        int ground = setting.Layers * (int)Math.Ceiling(cloth.GroundPicks.Value * lengths.OffLoom.Value - 1e-9);
        int pattern = (int)Math.Round(ground * cloth.PatternPicksPerGroundPick);
        ImmutableArray<WeftNeed> weft = WeftReckoning.For(cloth, ground, pattern, lengths.OffLoom, offLoomWidth, setting.Request.Allowances.WeftWaste);
        Derived<Mass> mass = ClothMass(setting.Request, lengths.WovenWarp, warpYarns, weft);
        return new PiecePlan
        {
            Piece = piece,
            Index = index,
            WarpTakeUp = cloth.WarpTakeUp,
            WeftTakeUp = cloth.WeftTakeUp,
            DrawIn = cloth.DrawIn,
            ShrinkageInLength = cloth.ShrinkageInLength,
            ShrinkageInWidth = cloth.ShrinkageInWidth,
            ClothLength = lengths.Cloth,
            OffLoomLength = lengths.OffLoom,
            LengthUnderTension = lengths.UnderTension,
            WovenWarp = lengths.WovenWarp,
            FringeWarp = lengths.Fringes,
            WantedReedWidth = lengths.WantedReedWidth,
            Ends = ends,
            ReedWidth = reedWidth,
            FinishedWidth = FinishedWidth(piece, washedWidth),
            FinishedLength = FinishedLength(piece, FinishingShrinkage.After("length washed", lengths.OffLoom, cloth.ShrinkageInLength)),
            GroundPicks = cloth.GroundPicks,
            GroundPicksUnderTension = Derived.From<Sett>(
                "ground picks to count on the loom", UnderTensionRule, cloth.GroundPicks, lengths.OffLoom, lengths.UnderTension, (n, off, on) => n * off / on),
            PatternPicksPerGroundPick = cloth.PatternPicksPerGroundPick,
            Cloth = cloth.Stages,
            Picks = Derived.From<Whole>(
                "picks",
                PicksRule,
                [
                    cloth.GroundPicks,
                    lengths.OffLoom,
                    Derived.Decision("layers", Whole.FromCount(setting.Layers)),
                    Derived.Decision("pattern picks", Whole.FromCount(pattern)),
                ],
                v => Math.Ceiling(v[0] * v[1] - 1e-9) * v[2] + v[3]),
            ClothMass = mass,
            MassPerArea = Derived.From<ArealDensity>(
                "mass per area",
                PerAreaRule,
                [mass, lengths.Cloth, washedWidth, Derived.Decision("layers", Whole.FromCount(setting.Layers))],
                v => v[0] * 1000 / (v[1] * v[2] * v[3])),
            Weft = weft,
        };
    }

    private static Derived<Length> FinishedWidth(Piece piece, Derived<Length> washed) => Derived.From<Length>(
        "finished width",
        FinishedWidthRule,
        washed,
        Derived.Decision("layers opened out", Whole.FromCount(piece.Make.WidthsPerLayer())),
        Derived.Decision("seam at each side", piece.SideSeam),
        (width, opened, seam) => Math.Max(0, width * opened - 2 * seam));

    private static Derived<Length> FinishedLength(Piece piece, Derived<Length> washed) => Derived.From<Length>(
        "finished length",
        FinishedLengthRule,
        washed,
        Derived.Decision("hem", piece.Hem),
        Derived.Decision("seam at each end", piece.EndSeam),
        (length, hem, seam) => Math.Max(0, length - 2 * hem - 2 * seam));

    private static Derived<Mass> ClothMass(
        PlanRequest request, Derived<Length> wovenWarp, IReadOnlyList<(Yarn Yarn, int Ends)> warpYarns, ImmutableArray<WeftNeed> weft)
    {
        var inputs = new List<IDerived> { wovenWarp };
        foreach ((Yarn yarn, _) in warpYarns) inputs.Add(yarn.LinearDensity);
        foreach (WeftNeed need in weft)
        {
            inputs.Add(need.InCloth);
            inputs.Add(request.Shelf.First(y => y.Id == need.YarnId).LinearDensity);
        }

        int warps = warpYarns.Count;
        return Derived.From<Mass>("mass of the cloth", MassRule, inputs, v =>
        {
            double milligrams = 0;
            for (int i = 0; i < warps; i++) milligrams += warpYarns[i].Ends * v[0] * v[1 + i];
            for (int i = 1 + warps; i < v.Length; i += 2) milligrams += v[i] * v[i + 1];
            return milligrams / 1e6;
        });
    }
}
