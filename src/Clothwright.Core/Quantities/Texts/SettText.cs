namespace Clothwright.Core.Quantities;

/// <summary>Reads threads, wraps or dents per width that a person typed.</summary>
public static class SettText
{
    private const string Mend = "Write the threads and the width they fill, for example 8/cm, 80/10cm, 20/in or 20 epi.";

    private static readonly HashSet<string> PerWords = new(StringComparer.OrdinalIgnoreCase) { "per", "je", "pro" };

    private static readonly HashSet<string> PerInchWords = new(StringComparer.OrdinalIgnoreCase) { "epi", "ppi", "dpi", "wpi", "tpi" };

    private static readonly HashSet<string> ThreadWords = new(StringComparer.OrdinalIgnoreCase)
    {
        "end", "ends", "pick", "picks", "thread", "threads", "dent", "dents", "wrap", "wraps", "warp", "weft",
    };

    /// <summary>Reads <c>8/cm</c>, <c>80/10cm</c>, <c>20/in</c>, <c>20 epi</c>, <c>20 e.p.i.</c>, <c>8 per cm</c>, <c>8 ends per cm</c>.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="where">Field path for a problem.</param>
    /// <returns>The sett, or the problem with its position in <paramref name="text"/>.</returns>
    public static Parsed<Sett> Parse(string text, string where = "sett")
    {
        var cursor = new TextCursor(text, where);
        if (cursor.IsTooLong) return cursor.Problem($"{cursor.Quoted()} is too long to be a sett.", Mend, 0);
        if (cursor.CommaProblem() is { } comma) return comma;
        if (cursor.Next is '-' or '−') return cursor.Problem($"The sett {cursor.Quoted()} is below 0.", Mend);
        if (!cursor.TryTakeNumber(out double threads)) return cursor.Problem($"{cursor.Quoted()} is not a sett: it does not start with a number.", Mend);
        if (threads == 0) return cursor.Problem($"The sett {cursor.Quoted()} is 0: no threads make no cloth.", Mend, 0);

        int at = cursor.AtEnd ? cursor.Text.Length : cursor.Position;
        string word = cursor.TakeWord().Replace(".", "", StringComparison.Ordinal);
        if (ThreadWords.Contains(word))
        {
            at = cursor.Position;
            word = cursor.TakeWord();
        }

        Parsed<Length> width = PerInchWords.Contains(word) ? Length.FromInches(1)
            : PerWords.Contains(word) || (word.Length == 0 && cursor.TryTake('/')) ? ReadWidth(cursor)
            : cursor.Problem($"The sett {cursor.Quoted()} does not say per which width.", Mend, at);
        if (!width.TryGet(out Length per)) return width.Problem!;
        if (!cursor.AtEnd) return cursor.Problem($"The sett {cursor.Quoted()} is followed by something that is not part of it.", Mend);

        double perMetre = threads / per.Metres;
        return double.IsFinite(perMetre) && perMetre > 0
            ? Sett.FromPerMetre(perMetre)
            : cursor.Problem($"The sett {cursor.Quoted()} is too large.", Mend, 0);
    }

    private static Parsed<Length> ReadWidth(TextCursor cursor)
    {
        int start = cursor.AtEnd ? cursor.Text.Length : cursor.Position;
        if (!cursor.TryTakeNumber(out double number)) number = 1;
        string unit = cursor.TakeWord().TrimEnd('.').ToLowerInvariant();
        if (!LengthText.Units.FactorByWord.TryGetValue(unit, out double metres))
        {
            return cursor.Problem($"{cursor.Quoted()} gives no width that can be read after the stroke.", Mend, start);
        }

        double width = number * metres;
        return width > 0 && double.IsFinite(width) ? Length.FromMetres(width) : cursor.Problem($"The width in {cursor.Quoted()} is 0.", Mend, start);
    }
}
