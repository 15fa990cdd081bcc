using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>Reads the text of a count: <c>8/2</c>, <c>2-40's</c>, <c>Nm 28/2</c>, <c>R 60 tex/2</c>, <c>34 tex S 600 x 2 Z 400; R 69.3 tex</c>.</summary>
internal static class CountText
{
    // A count up to 4 folded 5 times or more is rarer than the same text written the other way round.
    private const double SmallNumber = 4;
    private const double LargeNumber = 5;

    private const string Mend = "Write a count, for example 8/2, 2/20, 16/1, 150 den or R 60 tex/2.";

    /// <summary>Reads the words of a count.</summary>
    public static Parsed<CountWords> Read(string text, string where)
    {
        var cursor = new TextCursor(text, where);
        if (cursor.IsTooLong) return cursor.Problem($"{cursor.Quoted()} is too long to be a count.", Mend, 0);
        if (cursor.AtEnd) return cursor.Problem("No count was given.", Mend, 0);
        if (cursor.CommaProblem() is { } comma) return comma;
        if (cursor.Next is '-' or '−') return cursor.Problem($"The count {cursor.Quoted()} is below 0.", Mend);

        Parsed<CountWords> designation = ReadDesignation(cursor);
        if (!designation.TryGet(out CountWords? words)) return designation;
        if (cursor.TryTake(';'))
        {
            Parsed<CountWords> second = ReadDesignation(cursor);
            if (!second.TryGet(out CountWords? other)) return second;
            if (other.Fold != '\0') return cursor.Problem($"Both parts of {cursor.Quoted()} tell the strands.", "Tell them once, for example 34 tex x 2; R 69.3 tex.");
            words = words with { System = words.System ?? other.System, Other = other.First, OtherIsResultant = other.IsResultant };
        }

        return cursor.AtEnd ? words : cursor.Problem($"The count {cursor.Quoted()} is followed by something that is not part of it.", Mend);
    }

    /// <summary>Which of two numbers is the count and which the strands, by the custom of the system.</summary>
    /// <returns>Null when neither order gives whole strands.</returns>
    public static (double Number, int Plies, bool Reversed)? Order(CountSystemDefinition system, double first, double second)
    {
        bool firstCanBePlies = CanBePlies(first);
        bool secondCanBePlies = CanBePlies(second);
        if (!firstCanBePlies && !secondCanBePlies) return null;
        bool countFirst = system.PlyOrder switch
        {
            PlyOrder.PlyFirst => first > second,
            PlyOrder.Either => first >= second,
            _ => first > SmallNumber || second < LargeNumber,
        };
        countFirst = secondCanBePlies && (countFirst || !firstCanBePlies);
        bool reversed = system.PlyOrder != PlyOrder.Either && countFirst == (system.PlyOrder == PlyOrder.PlyFirst);
        return countFirst ? (first, (int)second, reversed) : (second, (int)first, reversed);
    }

    private static bool CanBePlies(double number) => number is >= 1 and <= 999 && number == Math.Floor(number);

    private static Parsed<CountWords> ReadDesignation(TextCursor cursor)
    {
        var words = new CountWords();
        bool prefix = true;
        while (prefix)
        {
            if (!words.IsResultant && cursor.TryTakeWord("R")) words = words with { IsResultant = true };
            else if (TakeSystem(cursor, words, out CountWords named)) words = named;
            else prefix = false;
        }

        if (!cursor.TryTakeNumber(out double first)) return cursor.Problem($"{cursor.Quoted()} is not a count: a number is missing.", Mend);
        if (first == 0) return cursor.Problem($"The count {cursor.Quoted()} is 0: no yarn has it.", Mend);
        words = words with { First = first, FirstMarked = TakeMark(cursor) };
        words = TakeSuffixes(cursor, words);

        int at = cursor.Position;
        while (cursor.TryTake('/', '-', '–', 'x', 'X', '×', '*'))
        {
            char sign = cursor.Text[cursor.Position - 1];
            char fold = sign is '/' or '-' or '–' ? '/' : 'x';
            if (words.Fold == '/' || (words.Fold == 'x' && fold == '/')) return cursor.Problem($"{cursor.Quoted()} folds the yarn in two ways of writing.", Mend, at);
            if (!cursor.TryTakeNumber(out double second)) return cursor.Problem($"{cursor.Quoted()} lacks a number after the {sign}.", Mend);
            if (second == 0) return cursor.Problem($"{cursor.Quoted()} has a 0 where strands or count should stand.", Mend, at + 1);
            words = words with { Second = words.Fold == 'x' ? words.Second * second : second, Fold = fold, SecondMarked = TakeMark(cursor) };
            words = TakeSuffixes(cursor, words);
        }

        return words;
    }

    private static CountWords TakeSuffixes(TextCursor cursor, CountWords words)
    {
        bool more = true;
        while (more)
        {
            more = TakeSystem(cursor, words, out words) || TakeTwistOrFilaments(cursor);
        }

        return words;
    }

    private static bool TakeSystem(TextCursor cursor, CountWords words, out CountWords named)
    {
        named = words;
        if (words.System is null)
        {
            foreach (string spelling in CountSystems.Spellings)
            {
                if (!cursor.TryTakeWord(spelling)) continue;
                named = words with { System = CountSystems.OfSpelling(spelling) };
                return true;
            }
        }
        else
        {
            foreach (string spelling in CountSystems.Spellings)
            {
                if (CountSystems.OfSpelling(spelling) == words.System && cursor.TryTakeWord(spelling)) return true;
            }
        }

        return false;
    }

    // "S 600" and "Z 400" tell the twist in turns per metre, "f24" the filaments: neither changes the thickness.
    private static bool TakeTwistOrFilaments(TextCursor cursor)
    {
        int back = cursor.AtEnd ? cursor.Text.Length : cursor.Position;
        if (cursor.TryTake('S', 'Z', 'f') && cursor.TryTakeNumber(out _)) return true;
        cursor.Position = back;
        return false;
    }

    // "20's" and "20s" right behind the number.
    private static bool TakeMark(TextCursor cursor)
    {
        string rest = cursor.Text[cursor.Position..];
        int length = rest is ['\'' or '’', 's' or 'S', ..] ? 2 : rest is ['s' or 'S', ..] ? 1 : 0;
        if (length == 0 || (rest.Length > length && char.IsLetterOrDigit(rest[length]))) return false;
        if (length == 1 && rest[0] == 'S' && rest[1..].TrimStart() is [>= '0' and <= '9', ..]) return false;
        cursor.Position += length;
        return true;
    }
}
