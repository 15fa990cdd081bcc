using Clothwright.Core.Cloths.Geometry;

namespace Clothwright.Core.Cloths.Look.Sections;

/// <summary>A thread bending over and under as a cosine wave, half a wave from crossing to crossing.</summary>
/// <param name="Height">Crimp height, crown to crown; unit of the pitch.</param>
/// <param name="Pitch">Spacing of the threads that are crossed.</param>
public readonly record struct CrimpWave(double Height, double Pitch)
{
    /// <summary>The wave of a known crimp: h = 4/3 p √c (Peirce 1937, from memory).</summary>
    /// <param name="crimp">Crimp on cloth length, a fraction.</param>
    /// <param name="pitch">Spacing of the threads that are crossed.</param>
    public static CrimpWave OfCrimp(double crimp, double pitch) => new(PeirceGeometry.ApproximateHeight(pitch, crimp), pitch);

    /// <summary>The steepest rise, in radians.</summary>
    public double SteepestRadians => Math.Atan(Math.PI / 2 * Height / Pitch);
}
