namespace Clothwright.Core.Cloths.Look.Light;

/// <summary>The mean body light of a fibre in plain cloth under a ring of lamps; divided by it, a thread shows the colour that was picked for it.</summary>
public static class BodyReference
{
    private const int Steps = 16;
    private const int Lamps = 24;
    private const double Bend = Math.PI / 6;

    /// <summary>Mean over a thread that bends ±30° and over lamps at 45° all round, seen from straight above.</summary>
    /// <param name="lustre">The fibre.</param>
    public static double Of(Lustre lustre)
    {
        ArgumentNullException.ThrowIfNull(lustre);
        double sum = 0;
        for (int lamp = 0; lamp < Lamps; lamp++)
        {
            (double sin, double cos) = Math.SinCos(2 * Math.PI * lamp / Lamps);
            var light = Direction.Unit(cos, sin, 1);
            for (int i = 0; i < Steps; i++)
            {
                double tilt = Bend * Middle(i);
                for (int j = 0; j < Steps; j++)
                {
                    sum += ThreadShading.At(lustre, ThreadDirection.Warp, light, Direction.OffTheFace, 0, tilt, Middle(j)).Body;
                }
            }
        }

        return sum / (Lamps * Steps * Steps);
    }

    // Middles of equal parts of −1 to 1.
    private static double Middle(int step) => 2 * (step + 0.5) / Steps - 1;
}
