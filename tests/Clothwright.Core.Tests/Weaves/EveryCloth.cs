using Clothwright.Core.Weaves;

namespace Clothwright.Core.Tests.Weaves;

/// <summary>Every drawdown of a size.</summary>
internal static class EveryCloth
{
    /// <summary>Every drawdown of up to a number of ends and picks.</summary>
    public static IEnumerable<Drawdown> UpTo(int ends, int picks) =>
        Enumerable.Range(1, ends).SelectMany(e => Enumerable.Range(1, picks).SelectMany(p => Sized(e, p)));

    /// <summary>Every drawdown of a number of ends and picks.</summary>
    public static IEnumerable<Drawdown> Sized(int ends, int picks)
    {
        for (int code = 0; code < 1 << (ends * picks); code++)
        {
            int bits = code;
            yield return Drawdown.From(ends, picks, (pick, end) => ((bits >> (pick * ends + end)) & 1) != 0);
        }
    }
}
