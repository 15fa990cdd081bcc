using System.Collections.Immutable;
using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Cloths.Look;

/// <summary>How one thread looks in the cloth.</summary>
/// <param name="Colour">Its colour under even light; of a variegated yarn the first of its colours.</param>
/// <param name="Width">How wide it lies in the cloth; above 0.</param>
public sealed record ThreadLook(SrgbColour Colour, Length Width)
{
    /// <summary>How thick it is through the cloth.</summary>
    public Length Height { get; init; } = Length.FromMetres(Width.Metres * 0.7);

    /// <summary>Its fibre.</summary>
    public Lustre Lustre { get; init; } = Lustres.Cotton;

    /// <summary>Slant of its fibres, radians; above 0 for Z twist.</summary>
    public double TwistRadians { get; init; }

    /// <summary>Distance along the thread from ply to ply; zero where no plies are seen.</summary>
    public Length PlySpacing { get; init; }

    /// <summary>Colours along a variegated yarn, taken round again; empty for a yarn of one colour.</summary>
    public ImmutableArray<ColourStretch> Stretches { get; init; } = [];

    /// <summary>Whether its colours begin alike on every thread, as of a warp painted after winding; else they run on from thread to thread.</summary>
    public bool BeginsAlike { get; init; }

    /// <summary>The yarn that takes over where this one is clasped; null for a thread that runs through.</summary>
    public ThreadLook? ClaspedWith { get; init; }

    /// <summary>Where the other yarn takes over, as a share of the width from the left (of a pick) or of the length from the front (of an end).</summary>
    public double ClaspShare { get; init; } = 0.5;
}
