using Clothwright.Core.Cloths.Look.Light;
using Clothwright.Core.Colours;

namespace Clothwright.Core.Cloths.Look.Pictures;

/// <summary>How a cloth is looked at.</summary>
/// <param name="Face">The side.</param>
/// <param name="Left">Millimetres of cloth to the left of the picture, as seen.</param>
/// <param name="Low">Millimetres of cloth below the picture.</param>
/// <param name="PerPixel">Millimetres of cloth in a pixel; above 0.</param>
/// <param name="Width">Pixels across; above 0.</param>
/// <param name="Height">Pixels up; above 0.</param>
/// <param name="Lighting">Lamp and eye.</param>
/// <param name="Behind">What is seen through gaps and beyond the edge.</param>
public sealed record ClothView(Face Face, double Left, double Low, double PerPixel, int Width, int Height, Lighting Lighting, LinearColour Behind)
{
    /// <summary>The light to which the eye is adapted, in which the cloth has the colours picked for its yarns.</summary>
    public Lighting Usual { get; init; } = Lighting.Window;

    /// <summary>Width of the whole cloth in millimetres; where the cloth may be of any width, that of the picture.</summary>
    /// <param name="look">The cloth.</param>
    public double ExtentAcross(LookDescription look) => look?.Width?.Millimetres ?? Left + PerPixel * Width;

    /// <summary>Length of the whole cloth in millimetres; where the cloth may be of any length, that of the picture.</summary>
    /// <param name="look">The cloth.</param>
    public double ExtentAlong(LookDescription look) => look?.Length?.Millimetres ?? Low + PerPixel * Height;
}
