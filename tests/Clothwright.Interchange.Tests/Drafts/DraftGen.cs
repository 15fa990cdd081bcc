using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Drafts;
using CsCheck;

namespace Clothwright.Interchange.Tests.Drafts;

/// <summary>Drafts of every kind: empty picks, ends on no shaft or on several, both sheds, either plan or both, threads described or not.</summary>
internal static class DraftGen
{
    private static readonly Gen<SrgbColour> Colour = Gen.Select(Gen.Byte, Gen.Byte, Gen.Byte, (r, g, b) => new SrgbColour(r, g, b));

    // Whole micrometres: twelve digits are written, so that such a length comes back exactly.
    private static readonly Gen<Length> Measure = Gen.Int[1, 40_000].Select(micrometres => Length.FromMillimetres(micrometres / 1000.0));

    private static readonly Gen<string> Name = Gen.OneOf(
        Gen.Const(""), Gen.Const("2/2 twill; tide = [ebb]"), Gen.Const("=1+1"), Gen.Const("'quoted"), Gen.Const("Gezeiten – \"Ebbe\", Flut"));

    public static Gen<WovenDraft> Woven { get; } =
        from shafts in Gen.Int[1, 12]
        from treadles in Gen.Int[1, 12]
        from ends in Gen.Int[1, 70]
        from picks in Gen.Int[1, 40]
        from threading in Sets(shafts, ends)
        from tieUp in Sets(shafts, treadles)
        from treadling in Sets(treadles, picks)
        from liftPlan in Sets(shafts, picks)
        from kind in Gen.Int[0, 3]
        from rising in Gen.Bool
        from name in Name
        from warp in Threads(ends)
        from weft in Threads(picks)
        select new WovenDraft(
            new Draft
            {
                Name = name,
                Shafts = shafts,
                RisingShed = rising,
                Threading = threading,
                TieUp = kind == 1 ? [] : tieUp,
                Treadling = kind is 0 or 3 ? treadling : [],
                LiftPlan = kind == 0 ? [] : liftPlan,
            },
            warp,
            weft);

    private static Gen<ImmutableArray<ShaftSet>> Sets(int members, int count)
    {
        Gen<ShaftSet> one = Gen.Int[1, members].Select(member => ShaftSet.Of(member));
        Gen<ShaftSet> any = Gen.ULong.Select(bits => new ShaftSet(bits & ShaftSet.FirstOf(members).Bits));
        return Gen.Frequency((6, one), (2, any), (1, Gen.Const(ShaftSet.None))).Array[count].Select(sets => sets.ToImmutableArray());
    }

    private static Gen<WovenThreads> Threads(int count) => Gen.Select(
        List(Colour, count), List(Measure, count), List(Measure, count), (colours, spacings, thicknesses) => new WovenThreads
        {
            Colours = colours,
            Spacings = spacings,
            Thicknesses = thicknesses,
        });

    // Not described; all alike; each on its own; two kinds.
    private static Gen<ImmutableArray<T>> List<T>(Gen<T> item, int count) => Gen.OneOf(
        Gen.Const(ImmutableArray<T>.Empty),
        item.Select(one => Enumerable.Repeat(one, count).ToImmutableArray()),
        item.Array[count].Select(all => all.ToImmutableArray()),
        Gen.Select(item, item, Gen.Bool.Array[count], (a, b, which) => which.Select(w => w ? a : b).ToImmutableArray()));
}
