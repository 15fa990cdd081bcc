using System.Text.RegularExpressions;

namespace Clothwright.Core.Yarns;

/// <summary>Free words, of which one part after the other is understood and taken out.</summary>
internal sealed class QuickText
{
    // Stands for what was taken: no word, no blank, no number.
    private const char Taken = '\u0001';

    private readonly string _original;
    private readonly char[] _left;

    /// <summary>The words with decimal points for decimal commas.</summary>
    public QuickText(string text)
    {
        _original = text;
        _left = text.ToCharArray();
        for (int i = 1; i + 1 < _left.Length; i++)
        {
            if (_left[i] == ',' && char.IsAsciiDigit(_left[i - 1]) && char.IsAsciiDigit(_left[i + 1])) _left[i] = '.';
        }
    }

    /// <summary>What is not understood yet.</summary>
    public string Left => new(_left);

    /// <summary>The words at a place, as they were written.</summary>
    public string Words(int start, int length) => _original.Substring(start, length).Trim();

    /// <summary>Takes a stretch out.</summary>
    public string Take(int start, int length)
    {
        _left.AsSpan(start, length).Fill(Taken);
        return Words(start, length);
    }

    /// <summary>Takes the first match of a pattern out; null if there is none.</summary>
    public Match? Take(Regex pattern)
    {
        Match match = pattern.Match(Left);
        if (!match.Success) return null;
        Take(match.Index, match.Length);
        return match;
    }

    /// <summary>The words of a match, as they were written.</summary>
    public string Words(Match match) => Words(match.Index, match.Length);

    /// <summary>What no one understood, in stretches between what was taken and between commas.</summary>
    public IEnumerable<string> Rest() => Left.Split([Taken, ',', ';', '\n'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
