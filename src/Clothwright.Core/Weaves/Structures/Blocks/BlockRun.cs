using System.Collections.Immutable;
using System.Globalization;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>A block of a threading and how long it is.</summary>
/// <param name="Block">Block, 1 for A.</param>
/// <param name="Length">Length, in units or in ends as the weave counts; 1 or more.</param>
public readonly record struct BlockRun(int Block, int Length)
{
    private const int MostRuns = 1000;
    private const int MostLength = 5000;

    /// <summary>The letter of the block.</summary>
    public char Letter => (char)('A' + Block - 1);

    /// <summary>Reads blocks such as <c>ABBA</c> or <c>A4 B4 C6</c>.</summary>
    /// <param name="text">Letters, each with or without a length behind it.</param>
    /// <param name="most">How many different blocks the weave has, 1 to 26.</param>
    /// <param name="usual">Length of a block that has none written.</param>
    public static Parsed<ImmutableArray<BlockRun>> Parse(string text, int most, int usual = 1)
    {
        ArgumentNullException.ThrowIfNull(text);
        var runs = ImmutableArray.CreateBuilder<BlockRun>();
        for (int i = 0; i < text.Length;)
        {
            char letter = char.ToUpperInvariant(text[i]);
            if (char.IsWhiteSpace(letter) || letter == ',')
            {
                i++;
                continue;
            }

            int digits = text.Skip(i + 1).TakeWhile(char.IsAsciiDigit).Count();
            int length = usual;
            if (letter < 'A' || letter >= 'A' + most || runs.Count == MostRuns
                || (digits > 0 && !(int.TryParse(text.AsSpan(i + 1, digits), NumberStyles.None, CultureInfo.InvariantCulture, out length) && length is >= 1 and <= 1000)))
            {
                return Problem(text, i, most);
            }

            runs.Add(new BlockRun(letter - 'A' + 1, length));
            i += 1 + digits;
        }

        if (runs.Count == 0) return Problem(text, 0, most);
        return runs.Sum(r => r.Length) <= MostLength
            ? runs.ToImmutable()
            : new InputProblem($"The blocks are {runs.Sum(r => r.Length)} long together.", "blocks", $"Keep to {MostLength}: one repeat is enough.") { Text = text, Position = 0 };
    }

    /// <summary>Letter and length.</summary>
    public override string ToString() => $"{Letter}{Length}";

    private static InputProblem Problem(string text, int position, int most) => new(
        $"\"{text}\" does not name blocks.",
        "blocks",
        $"Write letters from A to {(char)('A' + most - 1)}, with a length from 1 to 1000 behind a letter where it is wanted, for example {(most > 1 ? "ABBA or A4 B4" : "A4")}.")
    { Text = text, Position = position };
}
