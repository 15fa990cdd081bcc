using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Analysis.Floats;

namespace Clothwright.Cli.Commands;

/// <summary>Reads what a cloth is for, as far as floats matter.</summary>
internal static class FloatPurposeWord
{
    private static readonly (string Word, FloatPurpose Purpose)[] Words =
    [
        ("scarf", FloatPurpose.Scarf), ("shawl", FloatPurpose.Scarf), ("throw", FloatPurpose.Blanket), ("blanket", FloatPurpose.Blanket),
        ("towel", FloatPurpose.Towel), ("bag", FloatPurpose.Bag), ("cushion", FloatPurpose.Cushion), ("garment", FloatPurpose.Garment),
    ];

    /// <summary>The words, with commas between.</summary>
    public static string All => string.Join(", ", Words.Select(w => w.Word));

    /// <summary>The purpose.</summary>
    /// <param name="text">As typed; case does not matter.</param>
    /// <param name="child">Whether it is for a small child: then the strictest rule holds.</param>
    /// <exception cref="InputProblemException">The word is none of these.</exception>
    public static FloatPurpose Read(string text, bool child)
    {
        foreach ((string word, FloatPurpose purpose) in Words)
        {
            if (word.Equals(text.Trim(), StringComparison.OrdinalIgnoreCase)) return child ? FloatPurpose.ChildThrow : purpose;
        }

        throw new InputProblemException(new InputProblem($"\"{text}\" is no use that floats are judged by.", "--purpose", $"Use one of {All}."));
    }
}
