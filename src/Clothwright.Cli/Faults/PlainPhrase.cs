using System.Globalization;

namespace Clothwright.Cli.Faults;

/// <summary>A short sentence in plain words and numbers, whatever its case and whether it says "end" or "ends".</summary>
internal sealed class PlainPhrase
{
    private static readonly Dictionary<string, string> Alike = new(StringComparer.OrdinalIgnoreCase)
    {
        ["ends"] = "end",
        ["picks"] = "pick",
        ["shafts"] = "shaft",
        ["treadles"] = "treadle",
        ["exchanged"] = "crossed",
        ["missing"] = "left",
        ["twice"] = "doubled",
        ["nothing"] = "no",
    };

    // Words that change nothing.
    private static readonly HashSet<string> Idle = new(StringComparer.OrdinalIgnoreCase) { "and", "is", "are", "woven", "the", "out" };

    private readonly string[] _words;

    /// <summary>Takes a sentence apart.</summary>
    /// <param name="text">As typed.</param>
    public PlainPhrase(string text) =>
        _words = [.. Words(text).Where(w => !Idle.Contains(w)).Select(w => Alike.GetValueOrDefault(w, w.ToLowerInvariant()))];

    /// <summary>The numbers in it, if it reads as a pattern says; null if not.</summary>
    /// <param name="pattern">Words, with <c>#</c> for a number and, at its end, <c>*</c> for one or more.</param>
    public int[]? Numbers(string pattern)
    {
        string[] wanted = [.. Words(pattern)];
        var numbers = new List<int>();
        int at = 0;
        foreach (string word in wanted)
        {
            if (at == _words.Length) return null;
            if (word == "*")
            {
                while (at < _words.Length)
                {
                    if (Number(_words[at++]) is not { } listed) return null;
                    numbers.Add(listed);
                }
            }
            else if (word == "#")
            {
                if (Number(_words[at++]) is not { } number) return null;
                numbers.Add(number);
            }
            else if (word != _words[at++])
            {
                return null;
            }
        }

        return at == _words.Length ? [.. numbers] : null;
    }

    private static string[] Words(string text) => text.Split([' ', ',', '\t', '.'], StringSplitOptions.RemoveEmptyEntries);

    // Digits too many for a number stand for one that no draft has.
    private static int? Number(string word) => !word.All(char.IsAsciiDigit) ? null
        : int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number
        : int.MaxValue;
}
