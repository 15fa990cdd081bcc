using System.Runtime.CompilerServices;

namespace Clothwright.Core.Cloths.Look.Places;

/// <summary>Unevenness of threads: smooth, without a mean, the same on every machine because it is made of whole numbers.</summary>
internal static class ThreadNoise
{
    /// <summary>A well mixed number from a number (M. E. O'Neill's permuted congruence, from memory).</summary>
    public static uint Mixed(uint value)
    {
        unchecked
        {
            uint state = value * 747796405u + 2891336453u;
            uint word = ((state >> (int)((state >> 28) + 4u)) ^ state) * 277803737u;
            return (word >> 22) ^ word;
        }
    }

    /// <summary>Unevenness at a place along a thread, −1 to 1.</summary>
    /// <param name="at">Place, in steps of the unevenness; above −1 000 000.</param>
    /// <param name="seed">The thread.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static float Along(float at, uint seed)
    {
        float whole = MathF.Floor(at);
        float part = at - whole;
        float smooth = part * part * (3 - 2 * part);
        uint step = unchecked((uint)(int)whole);
        float a = Unit(step, seed);
        return a + (Unit(unchecked(step + 1), seed) - a) * smooth;
    }

    /// <summary>Unevenness over a surface, −1 to 1.</summary>
    /// <param name="x">First coordinate, in steps.</param>
    /// <param name="y">Second coordinate, in steps.</param>
    /// <param name="seed">The thread.</param>
    public static float Over(float x, float y, uint seed)
    {
        float whole = MathF.Floor(x);
        float part = x - whole;
        float smooth = part * part * (3 - 2 * part);
        uint column = unchecked((uint)(int)whole);
        float a = Along(y, Mixed(column ^ seed));
        return a + (Along(y, Mixed(unchecked(column + 1) ^ seed)) - a) * smooth;
    }

    private static float Unit(uint step, uint seed) => (Mixed(unchecked(step ^ seed)) >> 8) * (2f / 16777216f) - 1;
}
