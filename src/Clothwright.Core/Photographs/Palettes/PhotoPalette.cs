using System.Collections.Immutable;
using Clothwright.Core.Colours;

namespace Clothwright.Core.Photographs.Palettes;

/// <summary>The colours of a photograph of yarn or cloth, the largest first.</summary>
public sealed record PhotoPalette
{
    /// <summary>The colours, largest share first.</summary>
    public required ImmutableArray<PaletteColour> Colours { get; init; }

    /// <summary>How the light was taken out.</summary>
    public required LightCorrection Correction { get; init; }

    /// <summary>Whether a neutral spot was given.</summary>
    public bool LightKnown => Correction != LightCorrection.None;

    /// <summary>Share of the area that is burnt out and was left aside, 0 to 1.</summary>
    public required double BurntShare { get; init; }

    /// <summary>Share of the area that is too dark to tell its colour and was left aside, 0 to 1.</summary>
    public required double DarkShare { get; init; }

    /// <summary>What the reader should know of how far these colours can be trusted, in sentences.</summary>
    public required ImmutableArray<string> Notes { get; init; }

    /// <summary>ΔE00 between two of the colours.</summary>
    /// <param name="one">Index of the first.</param>
    /// <param name="other">Index of the second.</param>
    public double Between(int one, int other) => ColourDifference.Ciede2000(Colours[one].Lab, Colours[other].Lab);
}
