using Clothwright.Core.Quantities;

namespace Clothwright.Drawing.Pdf;

/// <summary>A size of paper.</summary>
/// <param name="Name">Its name.</param>
/// <param name="WidthPoints">Width in points, 72 to the inch.</param>
/// <param name="HeightPoints">Height in points, 72 to the inch.</param>
public sealed record PageSize(string Name, float WidthPoints, float HeightPoints)
{
    /// <summary>ISO 216 A4, 210 by 297 mm.</summary>
    public static PageSize A4 { get; } = new("A4", 210 / 25.4f * 72, 297 / 25.4f * 72);

    /// <summary>North American letter, 8.5 by 11 inches.</summary>
    public static PageSize Letter { get; } = new("Letter", 612, 792);

    /// <summary>Reads a size of paper by its name.</summary>
    /// <param name="text">a4 or letter; case does not matter.</param>
    public static Parsed<PageSize> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Trim().ToLowerInvariant() switch
        {
            "a4" => A4,
            "letter" => Letter,
            _ => new InputProblem($"\"{text}\" is no size of paper.", "paper", "Use a4 or letter."),
        };
    }
}
