using System.Collections;
using System.Text;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Grids;

/// <summary>A drawdown as lines of marks, one line a pick, one mark an end, end 1 at the left.</summary>
/// <remarks>
/// A line that begins with <c>;</c> is a note. The note <c>; first pick first</c> or <c>; first pick last</c> says which way round
/// the picks stand, and is obeyed. Picks may also be parted by slashes, as in <c>1100/0110</c>. Blanks between marks do not count;
/// in a grid that has marks for warp only, and not 1, a blank is weft on top.
/// </remarks>
public static class TextGrid
{
    private const string Example = "Write a line for each pick, with 1 for warp on top and 0 for weft on top, for example 1100.";

    /// <summary>Reads a grid.</summary>
    /// <param name="text">The lines.</param>
    /// <param name="order">Which way round the picks stand where the text does not say.</param>
    /// <param name="limits">How large it may be; null for <see cref="ReadingLimits.Usual"/>.</param>
    /// <returns>The drawdown, or the problem with line and column, both from 1.</returns>
    public static Parsed<Drawdown> Read(string text, GridOrder order = GridOrder.FirstPickFirst, ReadingLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        limits ??= ReadingLimits.Usual;
        if (text.Length > limits.MaxBytes) return new InputProblem($"The grid is longer than {limits.MaxBytes} characters.", "grid", "Give one repeat of the draft.");
        try
        {
            List<GridRow> rows = GridRow.Split(text, ref order, limits);
            bool blankIsWeft = BlankIsWeft(text, rows);
            if (!blankIsWeft) rows.RemoveAll(row => row.Text(text).IsWhiteSpace());
            if (rows.Count == 0) return new InputProblem("There are no picks in this grid.", "line 1", Example);
            return Fill(text, rows, blankIsWeft, order, limits);
        }
        catch (InputProblemException refusal)
        {
            return refusal.Problem;
        }
    }

    /// <summary>Writes a grid that says itself which way round its picks stand.</summary>
    /// <param name="cloth">The drawdown.</param>
    /// <param name="order">Which way round.</param>
    /// <param name="marks">The two marks.</param>
    /// <returns>The note of the order and a line for each pick, each ended by a line feed.</returns>
    public static string Write(Drawdown cloth, GridOrder order, GridMarks marks)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        var text = new StringBuilder();
        text.Append("; ").Append(GridRow.Statement(order)).Append('\n');
        for (int line = 0; line < cloth.Picks; line++)
        {
            ReadOnlySpan<ulong> row = cloth.Row(order == GridOrder.FirstPickFirst ? line : cloth.Picks - 1 - line);
            for (int end = 0; end < cloth.Ends; end++) text.Append(((row[end >> 6] >> (end & 63)) & 1) != 0 ? marks.Warp : marks.Weft);
            text.Append('\n');
        }

        return text.ToString();
    }

    // A grid of one kind of mark and blanks: the blanks are the other kind. Whoever writes 1 would write 0 as well.
    private static bool BlankIsWeft(string text, List<GridRow> rows)
    {
        bool warp = false;
        foreach (GridRow row in rows)
        {
            ReadOnlySpan<char> marks = row.Text(text);
            warp |= marks.ContainsAny(GridMarks.WarpMarks);
            if (marks.ContainsAny(GridMarks.WeftMarks) || marks.Contains('1')) return false;
        }

        return warp && rows.Exists(row => row.Text(text).Contains(' ') || row.Length != rows[0].Length);
    }

    private static Parsed<Drawdown> Fill(string text, List<GridRow> rows, bool blankIsWeft, GridOrder order, ReadingLimits limits)
    {
        int ends = blankIsWeft ? rows.Max(row => row.Length) : rows[0].Marks(text);
        if (ends > limits.MaxEnds || rows.Count > limits.MaxPicks || (long)ends * rows.Count > limits.MaxCrossings)
        {
            return new InputProblem($"A grid of {ends} ends and {rows.Count} picks is too large.", "grid", $"Give one repeat, at most {limits.MaxEnds} ends and {limits.MaxPicks} picks.");
        }

        var up = new BitArray(ends * rows.Count);
        for (int i = 0; i < rows.Count; i++)
        {
            int pick = order == GridOrder.FirstPickFirst ? i : rows.Count - 1 - i;
            if (Mark(text, rows[i], blankIsWeft, up, pick * ends, ends, rows[0].Line) is { } problem) return problem;
        }

        return Drawdown.From(ends, rows.Count, (pick, end) => up[pick * ends + end]);
    }

    private static InputProblem? Mark(string text, GridRow row, bool blankIsWeft, BitArray up, int first, int ends, int firstLine)
    {
        if (row.Length == 0)
        {
            return new InputProblem($"Line {row.Line} is empty, so it cannot be told whether it is a pick.", $"line {row.Line}, column 1", "Take the line out, or write the pick with marks for weft too, for example 0 or a full stop.");
        }

        ReadOnlySpan<char> marks = row.Text(text);
        int end = 0;
        for (int column = 0; column < marks.Length; column++)
        {
            char mark = marks[column];
            if (mark is ' ' or '\t' && !blankIsWeft) continue;
            bool warp = GridMarks.WarpMarks.Contains(mark);
            if (!warp && mark != ' ' && !GridMarks.WeftMarks.Contains(mark)) return Unknown(row, column, mark);
            if (end == ends) return Uneven(row, column, row.Marks(text), ends, firstLine);
            if (warp) up[first + end] = true;
            end++;
        }

        return end == ends || blankIsWeft ? null : Uneven(row, marks.Length, end, ends, firstLine);
    }

    private static InputProblem Unknown(GridRow row, int column, char mark) => new(
        $"\"{mark}\" is no mark of a grid.", $"line {row.Line}, column {row.Column + column}", $"Use 1 # X for warp on top and 0 . - for weft on top. {Example}");

    private static InputProblem Uneven(GridRow row, int column, int marks, int ends, int firstLine) => new(
        $"This pick crosses {marks} ends, the one in line {firstLine} crosses {ends}.", $"line {row.Line}, column {row.Column + column}", "Give every pick the same number of marks.");
}
