using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Lengths;

/// <summary>Draw-in: the width lost between the reed and the cloth off the loom.</summary>
public static class DrawIn
{
    /// <summary>Width in the reed that a width of cloth needs.</summary>
    public static Rule ReedRule { get; } = new("draw-in", "width in the reed = width off the loom ÷ (1 − draw-in)", Source.Derivation);

    /// <summary>Width of cloth that a width in the reed gives.</summary>
    public static Rule ClothRule { get; } = new("draw-in", "width off the loom = width in the reed × (1 − draw-in)", Source.Derivation);

    /// <summary>Width in the reed that a width of cloth needs.</summary>
    /// <param name="cloth">Width off the loom.</param>
    /// <param name="drawIn">Share of the width in the reed; below 1.</param>
    public static Derived<Length> ReedWidthFor(Derived<Length> cloth, Derived<Ratio> drawIn) =>
        Derived.From<Length>("width wanted in the reed", ReedRule, cloth, drawIn, (width, w) => width / (1 - w));

    /// <summary>Width of cloth that a width in the reed gives.</summary>
    /// <param name="reed">Width in the reed.</param>
    /// <param name="drawIn">Share of the width in the reed; below 1.</param>
    public static Derived<Length> ClothWidthOf(Derived<Length> reed, Derived<Ratio> drawIn) =>
        Derived.From<Length>("width off the loom", ClothRule, reed, drawIn, (width, w) => width * (1 - w));
}
