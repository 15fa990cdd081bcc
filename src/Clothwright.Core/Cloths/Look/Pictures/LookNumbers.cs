using Clothwright.Core.Cloths.Look.Light;

namespace Clothwright.Core.Cloths.Look.Pictures;

/// <summary>A description as plain numbers, in the order in which the processor and the graphics card of the page both read them.</summary>
public sealed partial class LookNumbers
{
    /// <summary>Numbers of one look.</summary>
    public const int PerLook = 24;

    /// <summary>Colours of a variegated yarn, evenly along its repeat.</summary>
    public const int StretchSteps = 256;

    /// <summary>The description.</summary>
    public required LookDescription Description { get; init; }

    /// <summary>
    /// Looks one after the other: linear red, green, blue, width mm | height mm, fuzz, slub, glint | plies per mm (below 0 for S),
    /// row of stretches or −1, stretch repeats per mm of cloth, pile 0 or 1 | tint red, green, blue, number of the light |
    /// wander mm, streaks, slant of the streaks, begins alike 0 or 1 |
    /// width of its place mm, and three without meaning.
    /// </summary>
    public required float[] Looks { get; init; }

    /// <summary>Lustres that occur.</summary>
    public required Lustre[] Lustres { get; init; }

    /// <summary>Tables of light to be made.</summary>
    public required LightKind[] Lights { get; init; }

    /// <summary>Linear red, green and blue of each step of each variegated yarn.</summary>
    public required float[] Stretches { get; init; }

    /// <summary>One round of the ends.</summary>
    public required ThreadRound Ends { get; init; }

    /// <summary>One round of the picks.</summary>
    public required ThreadRound Picks { get; init; }

    /// <summary>Crimp height of the warp, mm.</summary>
    public required float WarpHeight { get; init; }

    /// <summary>Crimp height of the weft, mm.</summary>
    public required float WeftHeight { get; init; }

    /// <summary>Tangent of the steepest rise of the warp.</summary>
    public required double WarpSteepest { get; init; }

    /// <summary>Tangent of the steepest rise of the weft.</summary>
    public required double WeftSteepest { get; init; }

    /// <summary>Heights of warp and weft together, mm.</summary>
    public float Thickness => WarpHeight + WeftHeight;

    /// <summary>Tangent of the steepest rise of a direction.</summary>
    public double Steepest(ThreadDirection direction) => direction == ThreadDirection.Warp ? WarpSteepest : WeftSteepest;
}
