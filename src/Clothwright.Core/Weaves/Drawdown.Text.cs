using System.Buffers;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves;

public sealed partial class Drawdown
{
    private static readonly SearchValues<char> Marks = SearchValues.Create("01#Xx.-");

    /// <summary>Reads rows of 0 and 1, first pick first, parted by slashes, blanks or line ends, for example <c>1100/0110</c>.</summary>
    /// <param name="text">The text; <c>#</c> and <c>X</c> stand for 1, <c>.</c> and <c>-</c> for 0 as well.</param>
    /// <param name="where">Place to name when the text cannot be read.</param>
    public static Parsed<Drawdown> Parse(string text, string where = "drawdown")
    {
        ArgumentNullException.ThrowIfNull(text);
        const string Example = "Write each pick as 0 and 1 (1 = warp on top), first pick first, for example 1100/0110/0011/1001.";
        string[] rows = text.Split(['/', '\n', '\r', ' ', '\t'], StringSplitOptions.RemoveEmptyEntries);
        if (rows.Length == 0) return new InputProblem("There are no picks in this drawdown.", where, Example) { Text = text, Position = 0 };
        if ((long)rows.Length * rows[0].Length > DraftLimits.Crossings)
        {
            return new InputProblem(
                $"{rows[0].Length} ends by {rows.Length} picks are more crossings than can be worked with ({DraftLimits.Crossings}).",
                where,
                "Give one repeat of the weave.");
        }

        foreach (string row in rows)
        {
            int odd = row.AsSpan().IndexOfAnyExcept(Marks);
            if (odd >= 0)
            {
                int at = text.IndexOf(row, StringComparison.Ordinal) + odd;
                return new InputProblem($"\"{row[odd]}\" is neither 0 nor 1.", where, Example) { Text = text, Position = at };
            }
        }

        int uneven = Array.FindIndex(rows, r => r.Length != rows[0].Length);
        if (uneven >= 0)
        {
            return new InputProblem(
                $"Pick {uneven + 1} crosses {rows[uneven].Length} ends, pick 1 crosses {rows[0].Length}.",
                $"{where}, pick {uneven + 1}",
                "Give every pick the same number of ends.");
        }

        return From(rows[0].Length, rows.Length, (pick, end) => rows[pick][end] is '1' or '#' or 'X' or 'x');
    }

    /// <summary>One pick as 0 and 1, end 1 first.</summary>
    /// <param name="pick">0-based pick.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such pick.</exception>
    public string RowText(int pick) => RowText(pick, '1', '0');

    /// <summary>Rows of 0 and 1, first pick first, with a slash between, for example <c>1100/0110</c>.</summary>
    public override string ToString() => string.Join('/', Enumerable.Range(0, Picks).Select(RowText));

    /// <summary>A grid to look at: last pick in the first line, so that the first pick lies nearest the weaver.</summary>
    /// <param name="warp">Mark for warp on top.</param>
    /// <param name="weft">Mark for weft on top.</param>
    public string ToGrid(char warp = '#', char weft = '.') =>
        string.Join('\n', Enumerable.Range(0, Picks).Reverse().Select(p => RowText(p, warp, weft)));

    private string RowText(int pick, char warp, char weft) => string.Create(Ends, (this, pick, warp, weft), static (text, state) =>
    {
        (Drawdown cloth, int pick, char warp, char weft) = state;
        ReadOnlySpan<ulong> row = cloth.Row(pick);
        for (int end = 0; end < text.Length; end++) text[end] = ((row[end >> 6] >> (end & 63)) & 1) != 0 ? warp : weft;
    });
}
