using System.Collections.Concurrent;

namespace Clothwright.Core.Cloths.Look.Light;

/// <summary>Light of every point of a thread under one lamp: rows from the steepest fall to the steepest rise, columns from edge to edge.</summary>
public sealed class LightTable
{
    /// <summary>Rows and columns.</summary>
    public const int Size = 128;

    /// <summary>Numbers in an entry: body over its reference, gloss, rim.</summary>
    public const int Parts = 3;

    // Both faces of a cloth, on screen, in print and in the handout, share their tables.
    private const int MostKept = 48;

    private static readonly ConcurrentDictionary<(Lustre Lustre, ThreadDirection Thread, double TwistRadians, double Steepest, Lighting Lighting), Lazy<LightTable>> Kept = new();

    private readonly float[] _values;

    private LightTable(float[] values) => _values = values;

    /// <summary>Reckons the table.</summary>
    /// <param name="lustre">Fibre.</param>
    /// <param name="thread">Which way the thread runs.</param>
    /// <param name="twistRadians">Slant of the fibres.</param>
    /// <param name="steepest">Tangent of the steepest rise.</param>
    /// <param name="lighting">Lamp and eye.</param>
    public static LightTable Of(Lustre lustre, ThreadDirection thread, double twistRadians, double steepest, Lighting lighting)
    {
        ArgumentNullException.ThrowIfNull(lustre);
        if (Kept.Count >= MostKept) Kept.Clear();
        return Kept.GetOrAdd((lustre, thread, twistRadians, steepest, lighting), k => new Lazy<LightTable>(() => Reckon(k.Lustre, k.Thread, k.TwistRadians, k.Steepest, k.Lighting))).Value;
    }

    private static LightTable Reckon(Lustre lustre, ThreadDirection thread, double twistRadians, double steepest, Lighting lighting)
    {
        double reference = BodyReference.Of(lustre);
        var values = new float[Size * Size * Parts];
        int at = 0;
        for (int row = 0; row < Size; row++)
        {
            double tilt = Math.Atan(Place(row) * steepest);
            for (int column = 0; column < Size; column++)
            {
                double across = Place(column);
                ThreadLight light = ThreadShading.At(lustre, thread, lighting.Lamp, lighting.Eye, twistRadians, tilt, across);
                values[at++] = (float)(light.Body / reference);
                values[at++] = (float)light.Gloss;
                values[at++] = (float)Rim(thread, lighting.Eye, tilt, across);
            }
        }

        return new LightTable(values);
    }

    /// <summary>An entry between its neighbours.</summary>
    /// <param name="slope">Rise as a share of the steepest, −1 to 1.</param>
    /// <param name="across">Place across the thread, −1 to 1.</param>
    /// <returns>Body over its reference, gloss, rim.</returns>
    public (float Body, float Gloss, float Rim) At(float slope, float across)
    {
        float y = (slope * 0.5f + 0.5f) * (Size - 1);
        float x = (across * 0.5f + 0.5f) * (Size - 1);
        float row = MathF.Min(MathF.Floor(y), Size - 2);
        float column = MathF.Min(MathF.Floor(x), Size - 2);
        float v = y - row;
        float u = x - column;
        ReadOnlySpan<float> low = _values.AsSpan(((int)row * Size + (int)column) * Parts, 2 * Parts);
        ReadOnlySpan<float> high = _values.AsSpan((((int)row + 1) * Size + (int)column) * Parts, 2 * Parts);
        return (Between(low[0], low[3], high[0], high[3], u, v), Between(low[1], low[4], high[1], high[4], u, v), Between(low[2], low[5], high[2], high[5], u, v));
    }

    private static float Between(float lowLeft, float lowRight, float highLeft, float highRight, float u, float v)
    {
        float a = lowLeft + (lowRight - lowLeft) * u;
        float b = highLeft + (highRight - highLeft) * u;
        return a + (b - a) * v;
    }

    private static double Place(int step) => 2.0 * step / (Size - 1) - 1;

    // Hairs standing off are seen against the light at the edge of the thread.
    private static double Rim(ThreadDirection thread, Direction eye, double tilt, double across)
    {
        (double sinTilt, double cosTilt) = Math.SinCos(tilt);
        double sin = 0.95 * across;
        double cos = Math.Sqrt(1 - sin * sin);
        Direction normal = thread == ThreadDirection.Warp
            ? new Direction(sin, -sinTilt * cos, cosTilt * cos)
            : new Direction(-sinTilt * cos, sin, cosTilt * cos);
        return Math.Pow(1 - Math.Clamp(normal.Dot(eye), 0, 1), 3);
    }
}
