using Clothwright.Core.Photographs.Pictures;

namespace Clothwright.Core.Photographs.Palettes;

/// <summary>What is asked of a photograph whose colours are wanted.</summary>
public sealed record PaletteQuestion
{
    /// <summary>The most colours that are told.</summary>
    public const int MostColours = 8;

    /// <summary>Two opposite corners of the part to look at; the whole picture if null.</summary>
    public (PhotoPoint From, PhotoPoint To)? Area { get; init; }

    /// <summary>A place in the picture that is known to be neutral; null if there is none.</summary>
    public PhotoPoint? NeutralPlace { get; init; }

    /// <summary>Share of light that the neutral place throws back.</summary>
    public double NeutralReflectanceShare { get; init; } = Colours.LightCorrection.PaperReflectanceShare;

    /// <summary>How many colours are told at most, 1 to <see cref="MostColours"/>; nearest of these where it is neither.</summary>
    public int Most { get; init; } = MostColours;
}
