using Clothwright.Core.Photographs.Pictures;

namespace Clothwright.Core.Photographs;

/// <summary>Ends and picks counted from a photograph of cloth.</summary>
/// <param name="Ends">Threads that run up the picture, counted to the right.</param>
/// <param name="Picks">Threads that run across the picture, counted upwards.</param>
/// <param name="Area">The square that was looked at.</param>
/// <remarks>A photograph does not tell warp from weft: the warp is taken to run up the picture.</remarks>
public sealed record ClothCount(ThreadSetCount Ends, ThreadSetCount Picks, PhotoArea Area)
{
    /// <summary>The lesser certainty of the two.</summary>
    public Certainty Certainty => Ends.Certainty < Picks.Certainty ? Ends.Certainty : Picks.Certainty;

    /// <summary>The same counts where the warp runs across the picture.</summary>
    public ClothCount Turned() => new(Picks, Ends, Area);
}
