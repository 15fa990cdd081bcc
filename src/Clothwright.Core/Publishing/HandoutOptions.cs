using Clothwright.Core.Wordings;
using Clothwright.Core.Worksheets;

namespace Clothwright.Core.Publishing;

/// <summary>What a handout says beside the plan.</summary>
public sealed record HandoutOptions
{
    /// <summary>Nothing beside the plan.</summary>
    public static HandoutOptions Plain { get; } = new();

    /// <summary>What a worksheet itself has to say: its currency and the maker's note.</summary>
    /// <param name="worksheet">The worksheet.</param>
    public static HandoutOptions Of(Worksheet worksheet)
    {
        ArgumentNullException.ThrowIfNull(worksheet);
        return new HandoutOptions { Currency = worksheet.Currency, Note = worksheet.Note };
    }

    /// <summary>Who wrote it; empty if not said.</summary>
    public string Author { get; init; } = "";

    /// <summary>Edition as the weaver counts them; empty if not said.</summary>
    public string Edition { get; init; } = "";

    /// <summary>Currency of prices, three letters of ISO 4217; empty leaves prices out.</summary>
    public string Currency { get; init; } = "";

    /// <summary>A word of the maker on the work; empty for none.</summary>
    public string Note { get; init; } = "";

    /// <summary>The language in which it is written; English if not said.</summary>
    public Wording Wording { get; init; } = Wording.English;

    /// <summary>Whether the workings of all figures follow as an appendix.</summary>
    public bool Workings { get; init; } = true;
}
