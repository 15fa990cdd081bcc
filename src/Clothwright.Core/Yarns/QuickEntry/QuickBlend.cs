using System.Text.RegularExpressions;

namespace Clothwright.Core.Yarns;

/// <summary>Fibres and their shares in free words.</summary>
internal static class QuickBlend
{
    private const double Rounding = 1.5;

    /// <summary>The blend, and whether its shares had to be guessed; null when no fibre was named.</summary>
    public static (QuickFound<FibreBlend>? Fibres, bool Guessed) Read(QuickText text)
    {
        string left = text.Left;
        Named[] named = Find(left);
        if (named.Length == 0) return (null, false);
        Span[] spans = [.. named.Select(n => n.Place)];
        double?[] shares = named.Length == 1 ? Single(left, named[0], ref spans) : Several(left, named, ref spans);
        foreach (Span span in spans) text.Take(span.At, span.Length);
        int start = spans.Min(s => s.At);
        int end = spans.Max(s => s.At + s.Length);
        bool guessed = Complete(shares);
        var blend = FibreBlend.Of([.. named.Zip(shares, (n, share) => (n.Fibre, share!.Value))]);
        return (new QuickFound<FibreBlend>(blend, text.Words(start, end - start)), guessed && blend.Shares.Length > 1);
    }

    private static Named[] Find(string left)
    {
        var found = new List<Named>();
        char[] rest = left.ToCharArray();
        foreach ((string word, Fibre fibre) in QuickWords.Fibres)
        {
            for (int at; (at = QuickWords.IndexIn(new string(rest), word)) >= 0;)
            {
                rest.AsSpan(at, word.Length).Fill('\u0001');
                if (!NamesACount(left, at + word.Length)) found.Add(new Named(new Span(at, word.Length), fibre));
            }
        }

        // "merino worsted" is merino: worsted there says how it was spun.
        if (found.Any(f => f.Fibre is { Family: FibreFamily.Wool, Id: not "wool-worsted" and not "wool-woollen" })) found.RemoveAll(f => f.Fibre.Id is "wool-worsted" or "wool-woollen" && Is(left, f, "worsted", "woollen"));
        return [.. found.OrderBy(f => f.Place.At)];
    }

    private static bool Is(string left, Named named, params ReadOnlySpan<string> words) => words.Contains(left.Substring(named.Place.At, named.Place.Length).ToLowerInvariant());

    // "cotton count" names the system of a count, not what the yarn is made of.
    private static bool NamesACount(string left, int end) =>
        left[end..].TrimStart(' ', '-') is var after && (after.StartsWith("count", StringComparison.OrdinalIgnoreCase) || after.StartsWith("nummer", StringComparison.OrdinalIgnoreCase));

    private static double?[] Single(string left, Named named, ref Span[] spans)
    {
        if (Before(left, named, 0) is { } before) spans = [.. spans, before.Span];
        else if (After(left, named, left.Length) is { } after) spans = [.. spans, after.Span];
        return [100];
    }

    private static double?[] Several(string left, Named[] named, ref Span[] spans)
    {
        (Span Span, double Share)?[] before = [.. named.Select((n, i) => Before(left, n, i == 0 ? 0 : named[i - 1].Place.End))];
        (Span Span, double Share)?[] after = [.. named.Select((n, i) => After(left, n, i + 1 < named.Length ? named[i + 1].Place.At : left.Length))];
        (Span Span, double Share)?[] said = before.Count(b => b is not null) >= after.Count(a => a is not null) ? before : after;
        if (said.Any(s => s is not null))
        {
            spans = [.. spans, .. said.Where(s => s is not null).Select(s => s!.Value.Span)];
            return [.. said.Select(s => s?.Share)];
        }

        Match? pair = named.Length == 2 ? QuickPatterns.SharePair().Matches(left).FirstOrDefault(m => QuickNumber.Of(m.Groups["one"].Value) + QuickNumber.Of(m.Groups["other"].Value) == 100) : null;
        if (pair is null) return new double?[named.Length];
        spans = [.. spans, new Span(pair.Index, pair.Length)];
        return [QuickNumber.Of(pair.Groups["one"].Value), QuickNumber.Of(pair.Groups["other"].Value)];
    }

    private static (Span Span, double Share)? Before(string left, Named named, int from) =>
        QuickPatterns.ShareBefore().Match(left[from..named.Place.At]) is { Success: true } m && QuickNumber.Of(m.Groups["share"].Value) is > 0 and <= 100 and var share ? (new Span(from + m.Index, m.Length), share) : null;

    private static (Span Span, double Share)? After(string left, Named named, int to) =>
        QuickPatterns.ShareAfter().Match(left[named.Place.End..to]) is { Success: true } m && QuickNumber.Of(m.Groups["share"].Value) is > 0 and <= 100 and var share ? (new Span(named.Place.End + m.Index, m.Length), share) : null;

    // One share that is missing is the rest; otherwise what is missing is a guess.
    private static bool Complete(double?[] shares)
    {
        double sum = shares.Sum() ?? 0;
        int missing = shares.Count(s => s is null);
        bool rest = missing == 1 && sum < 100;
        bool guessed = missing > 0 ? !rest : Math.Abs(sum - 100) > Rounding;
        for (int i = 0; i < shares.Length; i++) shares[i] ??= rest ? 100 - sum : 100.0 / shares.Length;
        return guessed;
    }

    private readonly record struct Span(int At, int Length)
    {
        public int End => At + Length;
    }

    private readonly record struct Named(Span Place, Fibre Fibre);
}
