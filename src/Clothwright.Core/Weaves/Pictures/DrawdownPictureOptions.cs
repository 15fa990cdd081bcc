namespace Clothwright.Core.Weaves.Pictures;

/// <summary>How a picture of a drawdown is to be read.</summary>
public sealed record DrawdownPictureOptions
{
    /// <summary>What is used when nothing else is said.</summary>
    public static DrawdownPictureOptions Usual { get; } = new();

    /// <summary>Ends across the whole picture; null to find them.</summary>
    public int? Ends { get; init; }

    /// <summary>Picks down the whole picture; null to find them.</summary>
    public int? Picks { get; init; }

    /// <summary>True: the first pick is the top row. False: it is the bottom row, nearest the weaver.</summary>
    public bool FirstPickAtTop { get; init; }

    /// <summary>True: the darker tone is warp on top. False: it is weft on top.</summary>
    public bool DarkIsWarp { get; init; } = true;

    /// <summary>Largest file.</summary>
    public int MaxBytes { get; init; } = 16 * 1024 * 1024;

    /// <summary>Largest picture, in pixels; refused before it is decoded.</summary>
    public int MaxPixels { get; init; } = 16_000_000;

    /// <summary>Most ends.</summary>
    public int MaxEnds { get; init; } = DraftLimits.Ends;

    /// <summary>Most picks.</summary>
    public int MaxPicks { get; init; } = DraftLimits.Picks;
}
