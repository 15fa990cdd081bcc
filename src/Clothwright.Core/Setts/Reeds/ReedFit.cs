using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Setts.Reeds;

/// <summary>How near a reed, or a number of equal rigid heddles, comes to a wanted sett.</summary>
/// <param name="Name">The reed or heddle as she calls it.</param>
/// <param name="Dents">Dents per width; for heddles the spaces of all that share the sett.</param>
/// <param name="Sley">Ends in each dent.</param>
/// <param name="Sett">The sett it gives.</param>
/// <param name="Error">How far off the wanted sett, as a fraction of it; above 0 is closer set.</param>
public sealed record ReedFit(string Name, Sett Dents, Sley Sley, Sett Sett, Ratio Error)
{
    /// <summary>Rigid heddles that share the sett; 0 for a reed.</summary>
    public int Heddles { get; init; }

    /// <summary>What to look out for, in sentences; empty if nothing.</summary>
    public ImmutableArray<string> Warnings { get; init; } = [];

    /// <summary>Whether the sley may leave marks along the cloth.</summary>
    public bool MarksLikely { get; init; }
}
