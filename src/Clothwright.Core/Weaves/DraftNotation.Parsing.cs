using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves;

public static partial class DraftNotation
{
    private const string Example = "Write threading | tie-up | treadling, for example 1234 | 1:12 2:23 3:34 4:14 | 1234, or 1234 | lift 12 23 34 14.";

    /// <summary>Reads a draft from one line.</summary>
    /// <param name="text">The line, as <see cref="Format"/> writes it; blanks may stand anywhere between threads.</param>
    /// <param name="where">Place to name when the text cannot be read.</param>
    public static Parsed<Draft> Parse(string text, string where = "draft")
    {
        ArgumentNullException.ThrowIfNull(text);
        var fields = Fields(text);
        var reader = new NotationReader(text, where);
        try
        {
            if (fields.Count < 2) return reader.Fault("The draft has no treadling and no lift plan.", text.Length);
            ImmutableArray<ShaftSet> threading = reader.Threads(fields[0]);
            ReadOnlySpan<char> second = text.AsSpan()[fields[1]];
            bool lifts = second.TrimStart().StartsWith("lift", StringComparison.OrdinalIgnoreCase);
            int used = lifts ? 2 : 3;
            if (fields.Count < used) return reader.Fault("The draft has a tie-up but no treadling.", text.Length);
            ImmutableArray<ShaftSet> plan = [];
            ImmutableArray<ShaftSet> tieUp = [];
            ImmutableArray<ShaftSet> treadling = [];
            if (lifts)
            {
                int start = fields[1].Start.Value + second.Length - second.TrimStart().Length + "lift".Length;
                plan = reader.Words(start..fields[1].End.Value);
            }
            else
            {
                treadling = reader.Threads(fields[2]);
                tieUp = reader.TieUp(fields[1], treadling.IsEmpty ? 0 : treadling.Max(t => t.Max));
            }

            bool rising = true;
            int shafts = Math.Max(1, ShaftsInUse(threading, tieUp, plan));
            foreach (Range field in fields[used..])
            {
                string option = text[field].Trim();
                if (option.Equals("sinking", StringComparison.OrdinalIgnoreCase)) rising = false;
                else if (option.Equals("rising", StringComparison.OrdinalIgnoreCase)) rising = true;
                else shafts = reader.Shafts(field);
            }

            return DraftCheck.Checked(new Draft
            {
                Shafts = shafts,
                Threading = threading,
                TieUp = tieUp,
                Treadling = treadling,
                LiftPlan = plan,
                RisingShed = rising,
            });
        }
        catch (InputProblemException exception)
        {
            return exception.Problem;
        }
    }

    private static List<Range> Fields(string text)
    {
        var fields = new List<Range>();
        int start = 0;
        for (int at = 0; at <= text.Length; at++)
        {
            if (at < text.Length && text[at] != '|') continue;
            fields.Add(start..at);
            start = at + 1;
        }

        return fields;
    }

    private readonly record struct NotationReader(string Text, string Where)
    {
        public InputProblem Fault(string what, int position) => new(what, Where, Example) { Text = Text, Position = position };

        // A row of threads: single numbers, or sets in brackets.
        public ImmutableArray<ShaftSet> Threads(Range field)
        {
            var threads = ImmutableArray.CreateBuilder<ShaftSet>();
            int end = field.End.Value;
            for (int at = SkipBlanks(field.Start.Value, end); at < end; at = SkipBlanks(at, end))
            {
                if (Text[at] != '(')
                {
                    threads.Add(One(ref at, end));
                    continue;
                }

                int open = at++;
                ShaftSet set = default;
                while (true)
                {
                    at = SkipBlanks(at, end);
                    if (at >= end) throw new InputProblemException(Fault("A bracket is not closed.", open));
                    if (Text[at] == ')') break;
                    set |= One(ref at, end);
                }

                at++;
                threads.Add(set);
            }

            return threads.ToImmutable();
        }

        // A row of sets with blanks between.
        public ImmutableArray<ShaftSet> Words(Range field)
        {
            var sets = ImmutableArray.CreateBuilder<ShaftSet>();
            int end = field.End.Value;
            for (int at = SkipBlanks(field.Start.Value, end); at < end; at = SkipBlanks(at, end)) sets.Add(Word(ref at, end));
            return sets.ToImmutable();
        }

        public ImmutableArray<ShaftSet> TieUp(Range field, int treadlesPressed)
        {
            var ties = new ShaftSet?[DraftLimits.Treadles];
            int treadles = treadlesPressed;
            int end = field.End.Value;
            for (int at = SkipBlanks(field.Start.Value, end); at < end; at = SkipBlanks(at, end))
            {
                int start = at;
                int treadle = One(ref at, end).Max;
                if (treadle == 0) throw new InputProblemException(Fault("Treadles are numbered from 1.", start));
                if (at >= end || Text[at] != ':') throw new InputProblemException(Fault($"Treadle {treadle} is not followed by a colon and its shafts.", at));
                if (ties[treadle - 1] is not null) throw new InputProblemException(Fault($"Treadle {treadle} is tied twice.", start));
                at++;
                ties[treadle - 1] = at < end && Text[at] is not (' ' or '\t') ? Word(ref at, end) : ShaftSet.None;
                treadles = Math.Max(treadles, treadle);
            }

            return [.. ties.Take(treadles).Select(t => t ?? ShaftSet.None)];
        }

        public int Shafts(Range field)
        {
            string option = Text[field].Trim();
            string number = option.EndsWith("shafts", StringComparison.OrdinalIgnoreCase) ? option[..^"shafts".Length].TrimEnd() : "";
            return int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int shafts)
                ? shafts
                : throw new InputProblemException(Fault($"\"{option}\" is not understood after the draft.", field.Start.Value));
        }

        private ShaftSet Word(ref int at, int end)
        {
            ShaftSet set = default;
            while (at < end && Text[at] is not (' ' or '\t' or '\n' or '\r')) set |= One(ref at, end);
            return set;
        }

        private ShaftSet One(ref int at, int end)
        {
            char c = char.ToLowerInvariant(Text[at]);
            if (char.IsAsciiDigit(c))
            {
                at++;
                return c == '0' ? ShaftSet.None : ShaftSet.Of(c - '0');
            }

            if (c is >= 'a' and <= 'z')
            {
                at++;
                return ShaftSet.Of(c - 'a' + 10);
            }

            if (c == '[')
            {
                int close = Text.IndexOf(']', at);
                if (close >= 0 && close < end
                    && int.TryParse(Text.AsSpan(at + 1, close - at - 1), NumberStyles.None, CultureInfo.InvariantCulture, out int number)
                    && number is >= 1 and <= ShaftSet.Highest)
                {
                    at = close + 1;
                    return ShaftSet.Of(number);
                }

                throw new InputProblemException(Fault($"Square brackets hold a number from 1 to {ShaftSet.Highest}.", at));
            }

            throw new InputProblemException(Fault($"\"{Text[at]}\" is no shaft or treadle.", at));
        }

        private int SkipBlanks(int at, int end)
        {
            while (at < end && Text[at] is ' ' or '\t' or '\n' or '\r') at++;
            return at;
        }
    }
}
