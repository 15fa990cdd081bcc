using Clothwright.Core.Weaves;

namespace Clothwright.Interchange.Drafts;

/// <summary>How large a file of a draft may be. Anything larger is refused with a message, before room is made for it.</summary>
/// <remarks>Together these keep the reading of the worst file below 256 MB of memory.</remarks>
public sealed record ReadingLimits
{
    /// <summary>The limits used when none are given.</summary>
    public static ReadingLimits Usual { get; } = new();

    /// <summary>Bytes in one file.</summary>
    public int MaxBytes { get; init; } = 8 * 1024 * 1024;

    /// <summary>Lines in one file.</summary>
    public int MaxLines { get; init; } = 400_000;

    /// <summary>Sections in one WIF file.</summary>
    public int MaxSections { get; init; } = 1_000;

    /// <summary>Characters in one line.</summary>
    public int MaxLineCharacters { get; init; } = 262_144;

    /// <summary>Ends in the warp.</summary>
    public int MaxEnds { get; init; } = DraftLimits.Ends;

    /// <summary>Picks in the weft.</summary>
    public int MaxPicks { get; init; } = DraftLimits.Picks;

    /// <summary>Ends times picks.</summary>
    public long MaxCrossings { get; init; } = DraftLimits.Crossings;

    /// <summary>Shafts; at most <see cref="DraftLimits.Shafts"/>.</summary>
    public int MaxShafts { get; init; } = DraftLimits.Shafts;

    /// <summary>Treadles; at most <see cref="DraftLimits.Treadles"/>.</summary>
    public int MaxTreadles { get; init; } = DraftLimits.Treadles;

    /// <summary>Entries in a palette of colours or symbols.</summary>
    public int MaxPaletteEntries { get; init; } = 65_536;

    /// <summary>Warnings told one by one; those beyond are counted.</summary>
    public int MaxWarnings { get; init; } = 200;
}
