using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Setts;

/// <summary>Reads and writes purposes.</summary>
public static class ClothPurposeText
{
    private static readonly ImmutableArray<(ClothPurpose Purpose, string Word)> Words =
    [
        (ClothPurpose.Airy, "airy"), (ClothPurpose.Drape, "drape"), (ClothPurpose.Everyday, "everyday"),
        (ClothPurpose.Firm, "firm"), (ClothPurpose.WeftFaced, "weft-faced"), (ClothPurpose.WarpFaced, "warp-faced"),
    ];

    /// <summary>The word for a purpose, for example <c>weft-faced</c>.</summary>
    /// <param name="purpose">The purpose.</param>
    public static string Word(ClothPurpose purpose) => Words.First(w => w.Purpose == purpose).Word;

    /// <summary>Reads a purpose.</summary>
    /// <param name="text">One of airy, drape, everyday, firm, weft-faced, warp-faced; case, blanks and hyphens do not matter.</param>
    public static Parsed<ClothPurpose> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string wanted = Plain(text);
        foreach ((ClothPurpose purpose, string word) in Words)
        {
            if (wanted.Equals(Plain(word), StringComparison.OrdinalIgnoreCase)) return purpose;
        }

        return new InputProblem(
            $"\"{text}\" is not a purpose.",
            "purpose",
            $"Use one of {string.Join(", ", Words.Select(w => w.Word))}.")
        { Text = text, Position = 0 };
    }

    private static string Plain(string text) =>
        text.Trim().Replace("-", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal);
}
