using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;

namespace Clothwright.Drawing.Faces;

/// <summary>How much of a cloth a picture shows, at true size.</summary>
/// <param name="Width">Width shown; above 0.</param>
/// <param name="Height">Length shown, from the first pick on; above 0.</param>
public readonly record struct ClothFrame(Length Width, Length Height)
{
    /// <summary>Where it begins on the front, from end 1 on.</summary>
    public Length Left { get; init; }

    /// <summary>A part of a cloth: from end 1 on, but of clasped picks the middle of where they meet.</summary>
    /// <param name="cloth">The cloth.</param>
    /// <param name="width">Width to show, above 0; no more than the cloth's is shown.</param>
    /// <param name="height">Length to show, above 0.</param>
    public static ClothFrame Of(LookDescription cloth, Length width, Length height)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        if (cloth.Width is not { } whole) return new ClothFrame(width, height);
        if (whole <= width) return new ClothFrame(whole, height);
        double[] meetings = [.. cloth.Picks.Where(p => p.ClaspedWith is not null).Select(p => p.ClaspShare)];
        if (meetings.Length == 0) return new ClothFrame(width, height);
        double left = whole.Metres * (meetings.Min() + meetings.Max()) / 2 - width.Metres / 2;
        return new ClothFrame(width, height) { Left = Length.FromMetres(Math.Clamp(left, 0, whole.Metres - width.Metres)) };
    }

    /// <summary>A piece of cloth to look at: at most 12 by 12 cm, and no wider than the cloth.</summary>
    /// <param name="cloth">The cloth.</param>
    public static ClothFrame Swatch(LookDescription cloth)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        var side = Length.FromCentimetres(12);
        return Of(cloth, side, side);
    }
}
