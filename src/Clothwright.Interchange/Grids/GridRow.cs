using Clothwright.Core.Quantities;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Grids;

/// <summary>One pick of a grid as a place in its text.</summary>
/// <param name="Start">Where it begins, from 0.</param>
/// <param name="Length">How many characters it has.</param>
/// <param name="Line">Its line, from 1.</param>
/// <param name="Column">Column of its first character, from 1.</param>
internal readonly record struct GridRow(int Start, int Length, int Line, int Column)
{
    public ReadOnlySpan<char> Text(string text) => text.AsSpan(Start, Length);

    /// <summary>Characters that are not blank.</summary>
    public int Marks(string text)
    {
        ReadOnlySpan<char> row = Text(text);
        return row.Length - row.Count(' ') - row.Count('\t');
    }

    public static string Statement(GridOrder order) => order == GridOrder.FirstPickFirst ? "first pick first" : "first pick last";

    /// <summary>Splits a text into picks, leaving out notes and empty lines before the first and after the last pick.</summary>
    public static List<GridRow> Split(string text, ref GridOrder order, ReadingLimits limits)
    {
        var rows = new List<GridRow>();
        int line = 0;
        for (int start = 0; start < text.Length;)
        {
            int length = text.AsSpan(start).IndexOfAny('\r', '\n');
            int end = length < 0 ? text.Length : start + length;
            line++;
            if (end - start > limits.MaxLineCharacters || line > limits.MaxLines)
            {
                throw new InputProblemException(new InputProblem("The grid is too large.", $"line {line}", $"Give one repeat, at most {limits.MaxLineCharacters} characters a line and {limits.MaxLines} lines."));
            }

            Take(text, start, end, line, rows, ref order);
            bool pair = end + 1 < text.Length && text[end] == '\r' && text[end + 1] == '\n';
            start = end + (pair ? 2 : 1);
        }

        while (rows.Count > 0 && rows[^1].Length == 0) rows.RemoveAt(rows.Count - 1);
        return rows;
    }

    private static void Take(string text, int start, int end, int line, List<GridRow> rows, ref GridOrder order)
    {
        ReadOnlySpan<char> written = text.AsSpan(start, end - start);
        ReadOnlySpan<char> trimmed = written.Trim();
        if (!trimmed.IsEmpty && trimmed[0] == ';')
        {
            foreach (GridOrder said in (ReadOnlySpan<GridOrder>)[GridOrder.FirstPickFirst, GridOrder.FirstPickLast])
            {
                if (trimmed[1..].Trim().Equals(Statement(said), StringComparison.OrdinalIgnoreCase)) order = said;
            }

            return;
        }

        if (written.IsEmpty && rows.Count == 0) return;
        foreach (Range range in written.Split('/'))
        {
            (int offset, int length) = range.GetOffsetAndLength(written.Length);
            rows.Add(new GridRow(start + offset, length, line, offset + 1));
        }
    }
}
