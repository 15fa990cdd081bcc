using Clothwright.Core.Colours;

namespace Clothwright.Core.Photographs.Palettes;

/// <summary>One colour of a photograph.</summary>
/// <param name="Light">The colour as light.</param>
/// <param name="AreaShare">Share of the area looked at, of what is neither burnt out nor too dark to tell; 0 to 1.</param>
/// <param name="Spread">How far its parts differ from it, root of the mean square, ΔE00.</param>
public sealed record PaletteColour(LinearColour Light, double AreaShare, double Spread)
{
    /// <summary>The colour as codes; light beyond white is cut off.</summary>
    public SrgbColour Codes => Light.ToSrgb();

    /// <summary>The colour in CIELAB.</summary>
    public CieLab Lab => CieLab.From(Light);
}
