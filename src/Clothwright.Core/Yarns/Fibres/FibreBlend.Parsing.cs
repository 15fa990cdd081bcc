using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

public sealed partial record FibreBlend
{
    // Labels round each share to whole percents, so three fibres may miss 100 by 1.
    private const double RoundingPercent = 1.5;

    private const string BlendMend = "Write each fibre with its share by mass, for example wool 80 %, silk 20 %.";

    /// <summary>Reads <c>cotton</c>, <c>wool 80 %, silk 20 %</c>, <c>80 % wool 20 % silk</c>, <c>cotton 60 / linen 40</c>.</summary>
    /// <param name="text">Fibres with shares by mass in percent; a single fibre needs no share.</param>
    /// <param name="where">Field path for a problem.</param>
    public static Parsed<FibreBlend> Parse(string text, string where = "fibres")
    {
        var cursor = new TextCursor(text, where);
        if (cursor.IsTooLong) return cursor.Problem($"{cursor.Quoted()} is too long to be a list of fibres.", BlendMend, 0);
        if (cursor.AtEnd) return cursor.Problem("No fibre was given.", BlendMend, 0);
        var parts = new List<(Fibre Fibre, double Part)>();
        while (!cursor.AtEnd)
        {
            int start = cursor.Position;
            bool before = TryTakeShare(cursor, out double share);
            int nameAt = cursor.AtEnd ? cursor.Text.Length : cursor.Position;
            string name = TakeName(cursor);
            if (name.Length == 0) return cursor.Problem($"A fibre is missing in {cursor.Quoted()}.", BlendMend, nameAt);
            bool after = !before && TryTakeShare(cursor, out share);
            Parsed<Fibre> fibre = FibreCatalogue.Find(name, where);
            if (!fibre.TryGet(out Fibre? found)) return fibre.Problem! with { Text = text, Position = nameAt };
            if (!before && !after && (parts.Count > 0 || !cursor.AtEnd)) return cursor.Problem($"{TextCursor.Quote(name)} in {cursor.Quoted()} has no share.", BlendMend, start);
            if ((before || after) && share is <= 0 or > 100) return cursor.Problem($"The share of {name} in {cursor.Quoted()} is not above 0 and at most 100 %.", BlendMend, start);
            parts.Add((found, before || after ? share : 100));
            cursor.TryTake(',', ';', '/', '+');
        }

        double sum = parts.Sum(p => p.Part);
        return Math.Abs(sum - 100) <= RoundingPercent
            ? Of(parts)
            : cursor.Problem($"The shares in {cursor.Quoted()} sum to {sum:0.##} %, not 100 %.", "Give shares that sum to 100 %, for example wool 80 %, silk 20 %.", 0);
    }

    private static bool TryTakeShare(TextCursor cursor, out double percent)
    {
        if (!cursor.TryTakeNumber(out percent)) return false;
        cursor.TryTake('%');
        return true;
    }

    // Letters, blanks, hyphens and brackets, up to a digit or a mark between fibres.
    private static string TakeName(TextCursor cursor)
    {
        int start = cursor.AtEnd ? cursor.Text.Length : cursor.Position;
        int depth = 0;
        while (cursor.Position < cursor.Text.Length)
        {
            char c = cursor.Text[cursor.Position];
            if (depth == 0 && (c is ';' or '/' or '+' or '%' || char.IsAsciiDigit(c) || (c == ',' && !ContinuesName(cursor, start)))) break;
            depth += c switch { '(' => 1, ')' => -1, _ => 0 };
            cursor.Position++;
        }

        return cursor.Text[start..cursor.Position].Trim();
    }

    // Some names hold a comma themselves: "silk, spun".
    private static bool ContinuesName(TextCursor cursor, int start)
    {
        string rest = cursor.Text[start..];
        return FibreCatalogue.All.Any(f => f.Name.IndexOf(',', StringComparison.Ordinal) == cursor.Position - start
            && rest.StartsWith(f.Name, StringComparison.OrdinalIgnoreCase));
    }
}
