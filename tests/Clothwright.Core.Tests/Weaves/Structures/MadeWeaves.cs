using System.Numerics;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis.Edges;
using Clothwright.Core.Weaves.Structures;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Structures;

/// <summary>Every generator with random legal parameters.</summary>
internal static class MadeWeaves
{
    private const int Free = int.MaxValue;

    private static readonly Gen<TwillBase> Figures = Gen.Int[1, 4].Array[2, 6].Where(r => r.Length % 2 == 0).Select(r => TwillBase.Of(r));

    private static readonly Gen<TwillBase> HalfAndHalf = AnyOf([.. new[] { 4, 6, 8, 10 }.SelectMany(n => EveryTwill.On(n)).Where(t => t.IsHalfAndHalf)]);

    private static readonly Gen<ThreadGroups> Groups = Gen.Int[1, 4].Array[2, 5].Select(g => ThreadGroups.Of(g));

    private static readonly Gen<(int Ends, int Step)> Steps =
        AnyOf([.. Enumerable.Range(5, 20).SelectMany(n => SatinSteps.On(n).Select(s => (n, s)))]);

    private static readonly Gen<SatinFace> Face = Gen.Bool.Select(b => b ? SatinFace.Warp : SatinFace.Weft);

    public static Gen<T> AnyOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Gen<int> Even(int least, int most) => Gen.Int[least / 2, most / 2].Select(i => 2 * i);

    private static Gen<Profile> Profiles(int blocks) =>
        from ends in Gen.Int[1, blocks].Array[1, 6]
        from picks in Gen.ULong[0, (1UL << blocks) - 1].Array[1, 5]
        select new Profile([.. ends], [.. picks.Select(p => new ShaftSet(p))]);

    private static Gen<BlockRun[]> Blocks(int least, int most) =>
        Gen.Select(Gen.Int[1, 4], Gen.Int[least, most], (b, l) => new BlockRun(b, l)).Array[1, 8];

    public static IReadOnlyDictionary<string, Gen<MadeWeave>> All { get; } = new Dictionary<string, Gen<MadeWeave>>(StringComparer.Ordinal)
    {
        ["plain weave"] = Even(2, 16).Select(n => new MadeWeave(PlainWeave.Of(n), 1, 1)),
        ["basket"] = Gen.Select(Groups, Groups, (e, p) => new MadeWeave(Basket.Of(e, p), p.Sizes.Max(), e.Sizes.Max())),
        ["warp rib"] = Groups.Select(p => new MadeWeave(Rib.Warp(p), p.Sizes.Max(), 1)),
        ["weft rib"] = Groups.Select(e => new MadeWeave(Rib.Weft(e), 1, e.Sizes.Max())),
        ["twill"] = Gen.Select(Figures, Gen.Bool, (t, s) => new MadeWeave(Twill.Of(t, s ? TwillHand.S : TwillHand.Z), t.LongestFloat, t.LongestFloat)),
        ["pointed twill"] = Figures.Where(t => t.Shafts > 2).Select(t => new MadeWeave(PointedTwill.Of(t), t.LongestFloat, 2 * t.LongestFloat - 1)),
        ["diamond twill"] = Figures.Where(t => t.Shafts > 2).Select(t => new MadeWeave(DiamondTwill.Of(t), 2 * t.LongestFloat - 1, 2 * t.LongestFloat - 1)),
        ["rosepath"] = Figures.Select(t => new MadeWeave(DiamondTwill.Rosepath(t), 2 * t.LongestFloat - 1, 2 * t.LongestFloat - 1)),
        ["goose-eye"] = Gen.Select(Figures, Gen.Int[2, 4], (t, r) => new MadeWeave(DiamondTwill.GooseEye(t, r), 2 * t.LongestFloat - 1, 2 * t.LongestFloat - 1)),
        ["broken twill"] = Figures.Where(t => t.Shafts >= 4).Select(t => new MadeWeave(BrokenTwill.Of(t), t.LongestFloat, t.Shafts - 1)),
        ["herringbone"] = Gen.Select(HalfAndHalf, Gen.Int[1, 3], (t, r) => new MadeWeave(Herringbone.Of(t, r), t.LongestFloat, t.LongestFloat)),
        ["advancing twill"] =
            from t in Figures
            from advance in Gen.Int[1, t.Shafts - 1]
            from run in Gen.Int[Math.Max(2, (int)BigInteger.GreatestCommonDivisor(advance, t.Shafts)), 12]
            from points in Gen.Bool
            select new MadeWeave(AdvancingTwill.Of(t, run, advance, points), t.LongestFloat, Free),
        ["skip twill"] = Gen.Select(HalfAndHalf, Gen.Int[1, 5], (t, d) => new MadeWeave(SkipTwill.Of(t, d), t.LongestFloat, t.LongestFloat)),
        ["undulating twill"] = Gen.Select(Figures, Gen.Int[1, 3].Array[1, 8], (t, e) => new MadeWeave(UndulatingTwill.Of(t, e), t.LongestFloat, 3 * t.LongestFloat)),
        ["honeycomb"] = Gen.Int[4, 12].Select(n => new MadeWeave(Honeycomb.Of(n), 2 * n - 3, 2 * n - 3)),
        ["satin"] = Gen.Select(Steps, Face, (s, f) => new MadeWeave(Satin.Of(s.Ends, s.Step, f), s.Ends - 1, s.Ends - 1)),
        ["irregular satin"] = Gen.Select(Gen.Int[5, 12], Face, (n, f) => new MadeWeave(IrregularSatin.On(n, f), n - 1, n - 1)),
        ["turned blocks"] =
            from s in AnyOf((3, 1), (4, 1), (6, 1), (5, 2), (5, 3), (7, 2), (8, 3), (8, 5))
            from profile in Profiles(4)
            select new MadeWeave(TurnedBlocks.Of(s.Item1, s.Item2, profile), s.Item1 - 1, s.Item1 - 1),
        ["summer and winter"] = Profiles(6).Select(p => new MadeWeave(SummerAndWinter.Of(p), 3, 3)),
        ["tied weave"] = Gen.Select(Profiles(5), Gen.Int[2, 4], (p, t) => new MadeWeave(TiedWeave.Of(p, t), Free, 2 * t - 1)),
        ["overshot"] = Gen.Select(Blocks(2, 6), Gen.Bool, (b, rose) => (Blocks: b, Rose: rose))
            .Where(o => NeighbouringPairs.LongestFloat(Overshot.Threading(o.Blocks)) is not null)
            .Select(o => new MadeWeave(
                Overshot.Of(o.Blocks, o.Rose ? OvershotFashion.Rose : OvershotFashion.Star),
                Free,
                NeighbouringPairs.LongestFloat(Overshot.Threading(o.Blocks))!.Value)),
        ["crackle"] = Gen.Select(Blocks(1, 3), Gen.Int[1, 3], (b, p) => new MadeWeave(Crackle.Of(b, p), Free, 3)),
        ["monk's belt"] = Gen.Select(Even(2, 12).Array[1, 6], Gen.Int[1, 4], (e, p) => new MadeWeave(MonksBelt.Of(e, p), Free, e.Max())),
        ["m's and o's"] = Gen.Select(Gen.Select(Gen.Int[1, 2], Gen.Int[1, 3], (b, l) => new BlockRun(b, l)).Array[1, 5], Even(4, 12), (b, c) => new MadeWeave(MsAndOs.Of(b, c), 2, c)),
        ["huck"] = Gen.Select(Gen.Enum<HuckForm>(), Gen.Int[1, 5], (f, k) => new MadeWeave(Huck.Of(f, 2 * k + 1), 2 * k + 1, 2 * k + 1)),
        ["bronson lace"] = Profiles(5).Select(p => new MadeWeave(BronsonLace.Of(p), 5, 5)),
        ["double weave"] = Gen.Int[2, 6].Select(k => new MadeWeave(SeparateLayers.Of(k), 2 * k - 1, 2 * k - 1)),
        ["tube"] = Gen.Enum<ClothSide>().Select(s => new MadeWeave(Tube.Of(s), 3, 3)),
        ["double width"] = Gen.Select(Gen.Int[2, 6], Gen.Enum<ClothSide>(), (k, f) => new MadeWeave(MultipleWidth.Of(k, f), 2 * k - 1, 2 * k - 1)),
        ["layers exchanging"] = Profiles(5).Select(p => new MadeWeave(ExchangedLayers.Of(p), Free, Free)),
        ["stitched double weave"] = Gen.Int[1, 5].Select(m => new MadeWeave(StitchedDoubleWeave.Of(m), 3, 3)),
        ["deflected double weave"] = Gen.Select(Even(2, 12), Gen.Bool, Gen.Bool, (g, a, b) => new MadeWeave(DeflectedDoubleWeave.Of(g, a, b), g + 1, g + 1)),
        ["shadow weave"] = Gen.Select(Even(4, 24), Gen.Bool, (n, p) => new MadeWeave(ShadowWeave.Of(n, p), 2, 2)),
        ["log cabin"] = Gen.Int[2, 12].Select(b => new MadeWeave(LogCabin.Of(b), 1, 1)),
        ["supplementary weft"] = Even(2, 20).Select(g => new MadeWeave(SupplementaryWeft.Of(g), Free, Math.Max(1, g - 1))),
        ["supplementary warp"] = Even(2, 20).Select(g => new MadeWeave(SupplementaryWarp.Of(g), Math.Max(1, g - 1), Free)),
        ["name draft"] = Gen.Select(Gen.String[Gen.Char['A', 'Z'], 1, 12], Gen.Bool, (n, m) => (Name: n, Mirrored: m))
            .Where(n => NeighbouringPairs.LongestFloat(NameDraft.Threading(n.Name, n.Mirrored)) is not null)
            .Select(n => new MadeWeave(NameDraft.Of(n.Name, n.Mirrored), Free, NeighbouringPairs.LongestFloat(NameDraft.Threading(n.Name, n.Mirrored))!.Value)),
    };
}
