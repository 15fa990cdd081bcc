using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;

namespace Clothwright.Drawing.Faces;

/// <summary>How much of a cloth a picture shows, at true size.</summary>
/// <param name="Width">Width shown, from end 1 on; above 0.</param>
/// <param name="Height">Length shown, from the first pick on; above 0.</param>
public readonly record struct ClothFrame(Length Width, Length Height)
{
    /// <summary>A piece of cloth to look at: at most 12 by 12 cm, and no wider than the cloth.</summary>
    /// <param name="cloth">The cloth.</param>
    public static ClothFrame Swatch(LookDescription cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        var side = Length.FromCentimetres(12);
        return new ClothFrame(cloth.Width is { } width && width < side ? width : side, side);
    }
}
