namespace Clothwright.TestKit.Photographs;

/// <summary>Paints a photograph of a swatch: shading of its own, told by nothing that reads photographs.</summary>
/// <remarks>
/// Threads are half ellipses that rise and sink at each crossing; the light comes from one side and from all around;
/// plies and hairs stand out; then blur, uneven light, noise and eight bits.
/// </remarks>
public static class SwatchPainter
{
    /// <summary>The photograph as red, green, blue, opacity in sRGB codes, rows from the top.</summary>
    public static byte[] Rgba(SyntheticSwatch swatch)
    {
        int side = swatch.Side;
        var cloth = new SwatchCloth(swatch);
        var view = new CameraView(swatch);
        float[][] planes = [new float[side * side], new float[side * side], new float[side * side]];
        Parallel.For(0, side, y =>
        {
            for (int x = 0; x < side; x++)
            {
                // Four samples in a pixel, as a sensor's pixel has an extent.
                (double r, double g, double b) = (0, 0, 0);
                foreach ((double sx, double sy) in (ReadOnlySpan<(double, double)>)[(0.25, 0.25), (0.75, 0.25), (0.25, 0.75), (0.75, 0.75)])
                {
                    (double cx, double cy) = view.OnCloth(x + sx, y + sy);
                    (double lr, double lg, double lb) = cloth.Light(cx, cy);
                    (r, g, b) = (r + lr / 4, g + lg / 4, b + lb / 4);
                }

                (planes[0][y * side + x], planes[1][y * side + x], planes[2][y * side + x]) = ((float)r, (float)g, (float)b);
            }
        });
        if (swatch.Hairs > 0) cloth.DrawHairs(planes, view, side);
        for (int i = 0; i < 3; i++) planes[i] = Blurred(planes[i], side, swatch.Blur);
        return Encoded(planes, swatch);
    }

    private static float[] Blurred(float[] plane, int side, double sigma)
    {
        if (sigma <= 0) return plane;
        int reach = (int)Math.Ceiling(3 * sigma);
        double[] kernel = [.. Enumerable.Range(-reach, 2 * reach + 1).Select(i => Math.Exp(-i * i / (2 * sigma * sigma)))];
        double sum = kernel.Sum();
        float[] once = new float[plane.Length];
        float[] twice = new float[plane.Length];
        for (int y = 0; y < side; y++)
        {
            for (int x = 0; x < side; x++)
            {
                double light = 0;
                for (int i = -reach; i <= reach; i++) light += kernel[i + reach] * plane[y * side + Math.Clamp(x + i, 0, side - 1)];
                once[y * side + x] = (float)(light / sum);
            }
        }

        for (int y = 0; y < side; y++)
        {
            for (int x = 0; x < side; x++)
            {
                double light = 0;
                for (int i = -reach; i <= reach; i++) light += kernel[i + reach] * once[Math.Clamp(y + i, 0, side - 1) * side + x];
                twice[y * side + x] = (float)(light / sum);
            }
        }

        return twice;
    }

    private static byte[] Encoded(float[][] planes, SyntheticSwatch swatch)
    {
        int side = swatch.Side;
        var chance = new SeededChance(swatch.Seed ^ 0x5EED);
        (double ly, double lx) = Math.SinCos(swatch.LightFromDegrees * Math.PI / 180);
        byte[] rgba = new byte[side * side * 4];
        for (int i = 0; i < side * side; i++)
        {
            double u = (i % side) / (double)side - 0.5;
            double v = 0.5 - (i / side) / (double)side;
            double fall = 1 - swatch.UnevenLight * (0.5 - (u * lx + v * ly) * 0.7) - 0.3 * swatch.UnevenLight * (u * u + v * v);
            for (int c = 0; c < 3; c++)
            {
                double light = planes[c][i] * fall + swatch.Noise * chance.Normal();
                rgba[i * 4 + c] = Code(light);
            }

            rgba[i * 4 + 3] = 255;
        }

        return rgba;
    }

    private static byte Code(double light)
    {
        double c = Math.Clamp(light, 0, 1);
        double encoded = c <= 0.0031308 ? 12.92 * c : 1.055 * Math.Pow(c, 1 / 2.4) - 0.055;
        return (byte)(encoded * 255 + 0.5);
    }
}
