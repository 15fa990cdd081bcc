using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>What free words such as <c>8/2 bamboo, 200 g cone, tide blue, 3 left</c> tell about a yarn; each part with the words it was read from.</summary>
public sealed record QuickYarn
{
    /// <summary>The longest text that is read, in characters.</summary>
    public const int LongestText = 400;

    /// <summary>The words as they were written.</summary>
    public required string Words { get; init; }

    /// <summary>Its count; null when none was found.</summary>
    public QuickCount? Count { get; init; }

    /// <summary>Length and mass as printed; null when none was found.</summary>
    public QuickFound<YarnLabel>? Label { get; init; }

    /// <summary>What it is made of; null when no fibre was named.</summary>
    public QuickFound<FibreBlend>? Fibres { get; init; }

    /// <summary>Whether several fibres were named without their shares, so that equal shares are only a guess.</summary>
    public bool SharesAreGuessed { get; init; }

    /// <summary>How it is made.</summary>
    public required QuickFound<YarnConstruction> Construction { get; init; }

    /// <summary>How it is put up.</summary>
    public required QuickFound<PackageForm> Form { get; init; }

    /// <summary>Yarn in one package; null when not told.</summary>
    public QuickFound<Mass>? PackageMass { get; init; }

    /// <summary>How many packages there are, begun ones as parts.</summary>
    public required QuickFound<double> Packages { get; init; }

    /// <summary>Mass that is left in all; null when not told.</summary>
    public QuickFound<Mass>? MassLeft { get; init; }

    /// <summary>Name of its colour: the words that were nothing else; null when none were left.</summary>
    public QuickFound<string>? ColourName { get; init; }

    /// <summary>Its colour: as given, by a colour word, or undyed where nothing says it.</summary>
    public required QuickFound<SrgbColour> Colour { get; init; }

    /// <summary>Dye lot; null when not told.</summary>
    public QuickFound<string>? Lot { get; init; }

    /// <summary>Price of one package; null when not told.</summary>
    public QuickFound<Money>? Price { get; init; }

    /// <summary>Whether the weaver has to say something before the yarn can be used: the system of its count, or its fibre, or how fine it is.</summary>
    public bool HasToAsk => Fibres is null || SharesAreGuessed || (Label is null && Count?.Taken is null);

    /// <summary>Reads free words.</summary>
    /// <param name="text">The words, in English or German, in any order.</param>
    /// <param name="where">Field path for a problem.</param>
    /// <returns>What they tell; a problem when there are none, or too many.</returns>
    public static Parsed<QuickYarn> Read(string text, string where = "words")
    {
        ArgumentNullException.ThrowIfNull(text);
        const string mend = "Write for example: 8/2 bamboo, 200 g cone, tide blue, 3 left.";
        if (string.IsNullOrWhiteSpace(text)) return new InputProblem("Nothing was written.", where, mend);
        return text.Length > LongestText
            ? new InputProblem($"{text.Length} characters are too many for one yarn.", where, $"Keep it to {LongestText} characters. {mend}")
            : QuickReader.Read(text);
    }
}
