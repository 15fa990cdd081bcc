using System.Collections.Immutable;
using Clothwright.Core.Weaves;
using CsCheck;

namespace Clothwright.Core.Tests.Weaves.Fitting;

/// <summary>Drafts for property tests.</summary>
internal static class FittingGen
{
    /// <summary>Single ends on 2 to 6 shafts, 1 to 8 treadles, up to a number of treadles a pick, either shed.</summary>
    public static Gen<Draft> Draft(int feet) =>
        from shafts in Gen.Int[2, 6]
        from treadles in Gen.Int[1, 8]
        from threading in Gen.Int[1, shafts].Array[3, 24]
        from tieUp in Gen.ULong[1, (1UL << shafts) - 1].Array[treadles]
        from treadling in Gen.Int[1, treadles].Array[1, feet].Array[2, 16]
        from rising in Gen.Bool
        select new Draft
        {
            Shafts = shafts,
            Threading = [.. threading.Select(s => ShaftSet.Of(s))],
            TieUp = [.. tieUp.Select(t => new ShaftSet(t))],
            Treadling = [.. treadling.Select(p => ShaftSet.Of(p))],
            RisingShed = rising,
        };

    /// <summary>Different lifts, none empty.</summary>
    public static Gen<ShaftSet[]> Lifts(int shafts, int most) =>
        Gen.ULong[1, (1UL << shafts) - 1].Array[1, most].Select(l => l.Distinct().Select(b => new ShaftSet(b)).ToArray());

    public static Draft Straight(string[] tieUp, int ends, int picks, int shafts) => new()
    {
        Shafts = shafts,
        Threading = [.. Enumerable.Range(0, ends).Select(e => ShaftSet.Of(e % shafts + 1))],
        TieUp = [.. tieUp.Select(Set)],
        Treadling = [.. Enumerable.Range(0, picks).Select(p => ShaftSet.Of(p % tieUp.Length + 1))],
    };

    public static Draft Twill(string word, int ends, int picks) => Straight(
        [.. Enumerable.Range(0, word.Length).Select(p =>
            string.Concat(Enumerable.Range(0, word.Length).Where(e => word[(e - p + word.Length) % word.Length] == '1').Select(e => e + 1)))],
        ends, picks, word.Length);

    public static ShaftSet Set(string digits) => ShaftSet.Of([.. digits.Select(c => c - '0')]);
}
