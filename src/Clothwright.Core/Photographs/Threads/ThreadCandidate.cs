using Clothwright.Core.Photographs.Spectra;

namespace Clothwright.Core.Photographs.Threads;

/// <summary>A spacing that threads may have, with what spectra and strips say of it.</summary>
internal sealed record ThreadCandidate(ThreadRay Ray, StripReading Strips)
{
    /// <summary>How well both together speak for it: the ray's score, weighed by how evenly gaps come.</summary>
    public double Weight => Math.Max(0, Ray.Score) * Strips.Fit;
}
