using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves;

public sealed partial class ThreadOrder
{
    private const int LongestRepeat = DraftLimits.Picks;
    private const int DeepestGroup = 16;

    /// <summary>Reads an order: runs such as <c>4A 4B</c>, groups such as <c>3(A B) 2C</c>.</summary>
    /// <param name="text">The text; blanks and commas part, letters in either case.</param>
    /// <param name="where">Place to name when the text cannot be read.</param>
    public static Parsed<ThreadOrder> Parse(string text, string where = "order")
    {
        ArgumentNullException.ThrowIfNull(text);
        var reader = new Reader(text, where);
        var yarns = new List<int>();
        int at = 0;
        InputProblem? problem = reader.ReadGroup(ref at, yarns, depth: 0);
        if (problem is not null) return problem;
        return yarns.Count > 0
            ? new ThreadOrder([.. yarns])
            : reader.Fault("The order names no thread.", 0);
    }

    private readonly record struct Reader(string Text, string Where)
    {
        public InputProblem Fault(string what, int position) =>
            new(what, Where, "Write runs with their length in front, for example 4A 4B, or 3(A B) 2C.") { Text = Text, Position = position };

        public InputProblem? ReadGroup(ref int at, List<int> yarns, int depth)
        {
            while (at < Text.Length)
            {
                char c = Text[at];
                if (c is ' ' or ',' or '\t' or '\n' or '\r')
                {
                    at++;
                    continue;
                }

                if (c == ')') return depth > 0 ? null : Fault("A bracket closes that was not opened.", at);
                InputProblem? problem = ReadRun(ref at, yarns, depth);
                if (problem is not null) return problem;
            }

            return depth == 0 ? null : Fault("A bracket is not closed.", Text.Length);
        }

        private InputProblem? ReadRun(ref int at, List<int> yarns, int depth)
        {
            int start = at;
            int times = 0;
            while (at < Text.Length && char.IsAsciiDigit(Text[at]) && times <= LongestRepeat) times = times * 10 + (Text[at++] - '0');
            if (at == start) times = 1;
            if (times is 0 or > LongestRepeat) return Fault($"A run is 1 to {LongestRepeat} threads long.", start);

            var unit = new List<int>();
            if (at < Text.Length && Text[at] == '(')
            {
                if (depth >= DeepestGroup) return Fault($"Brackets stand more than {DeepestGroup} deep.", at);
                at++;
                InputProblem? problem = ReadGroup(ref at, unit, depth + 1);
                if (problem is not null) return problem;
                at++;
            }
            else
            {
                int name = at;
                int yarn = -1;
                while (at < Text.Length && char.IsAsciiLetter(Text[at]) && at - name < 2) yarn = (yarn + 1) * 26 + (char.ToUpperInvariant(Text[at++]) - 'A');
                if (at == name) return Fault(at < Text.Length ? $"\"{Text[at]}\" names no yarn." : "The last run names no yarn.", at);
                if (at < Text.Length && char.IsAsciiLetter(Text[at])) return Fault("A yarn is named by one or two letters.", at);
                unit.Add(yarn);
            }

            if ((long)unit.Count * times + yarns.Count > LongestRepeat) return Fault($"The order is longer than {LongestRepeat} threads.", start);
            for (int i = 0; i < times; i++) yarns.AddRange(unit);
            return null;
        }
    }
}
