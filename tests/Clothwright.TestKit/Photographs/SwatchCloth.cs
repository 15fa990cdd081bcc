namespace Clothwright.TestKit.Photographs;

/// <summary>The light that leaves each place of a swatch.</summary>
internal sealed class SwatchCloth
{
    private const double Ambient = 0.35;
    private const double Steepness = 0.55;

    private readonly SyntheticSwatch _swatch;
    private readonly ThreadPlaces _ends;
    private readonly ThreadPlaces _picks;
    private readonly double _skew;
    private readonly (double X, double Y, double Z) _light;
    private readonly double[] _endTone;
    private readonly double[] _pickTone;

    public SwatchCloth(SyntheticSwatch swatch)
    {
        _swatch = swatch;
        var chance = new SeededChance(swatch.Seed);
        _ends = new ThreadPlaces(2048, swatch.Jitter, chance);
        _picks = new ThreadPlaces(2048, swatch.Jitter, chance);
        _endTone = [.. Enumerable.Range(0, 64).Select(_ => 1 + 0.06 * chance.Normal())];
        _pickTone = [.. Enumerable.Range(0, 64).Select(_ => 1 + 0.06 * chance.Normal())];
        _skew = Math.Tan(swatch.SkewDegrees * Math.PI / 180);
        (double sin, double cos) = Math.SinCos(swatch.LightFromDegrees * Math.PI / 180);
        double length = Math.Sqrt(cos * cos * 0.64 + sin * sin * 0.64 + 1);
        _light = (0.8 * cos / length, 0.8 * sin / length, 1 / length);
    }

    /// <summary>Linear light at a place given in millimetres.</summary>
    public (double Red, double Green, double Blue) Light(double x, double y)
    {
        double u = x * _swatch.EndsPerCentimetre / 10;
        double v = (y - x * _skew) * _swatch.PicksPerCentimetre / 10;
        (int end, double offEnd) = _ends.Nearest(u);
        (int pick, double offPick) = _picks.Nearest(v);
        double q = offEnd / (_swatch.WarpCover / 2);
        double r = offPick / (_swatch.WeftCover / 2);
        bool warpOver = Over(end, pick);
        bool inEnd = Math.Abs(q) < 1;
        bool inPick = Math.Abs(r) < 1;
        if (warpOver ? inEnd : !inPick && inEnd) return Thread(true, end, q, offPick, v, pick, end, warpOver);
        if (inPick) return Thread(false, pick, r, offEnd, u, end, pick, !warpOver);
        return (0.03, 0.03, 0.03);
    }

    public void DrawHairs(float[][] planes, CameraView view, int side)
    {
        var chance = new SeededChance(_swatch.Seed ^ 0x4A12);
        double width = side / _swatch.PixelsPerMillimetre;
        int count = (int)(_swatch.Hairs * width * width * _swatch.EndsPerCentimetre * _swatch.PicksPerCentimetre / 100);
        for (int hair = 0; hair < count; hair++)
        {
            (double x, double y) = (chance.Between(-0.5, 0.5) * width, chance.Between(-0.5, 0.5) * width);
            double direction = chance.Between(0, 2 * Math.PI);
            double bend = chance.Between(-0.6, 0.6);
            double spacing = 10 / _swatch.EndsPerCentimetre;
            for (int step = 0; step < 60; step++)
            {
                (double px, double py) = view.OnPicture(x, y);
                int i = (int)py * side + (int)px;
                if (px >= 0 && py >= 0 && px < side && py < side)
                {
                    (double R, double G, double B) colour = _swatch.WarpColours[0];
                    planes[0][i] += (float)((colour.R * 1.1 - planes[0][i]) * 0.35);
                    planes[1][i] += (float)((colour.G * 1.1 - planes[1][i]) * 0.35);
                    planes[2][i] += (float)((colour.B * 1.1 - planes[2][i]) * 0.35);
                }

                x += Math.Cos(direction) * spacing * 0.04;
                y += Math.Sin(direction) * spacing * 0.04;
                direction += bend * 0.05;
            }
        }
    }

    private bool Over(int end, int pick)
    {
        string row = _swatch.Weave[Wrap(pick, _swatch.Weave.Length)];
        return row[Wrap(end, row.Length)] == '1';
    }

    private static int Wrap(int index, int count) => (index % count + count) % count;

    // q runs from -1 to 1 across the thread; along is the place between crossings, off the crossing's middle.
    private (double Red, double Green, double Blue) Thread(bool warp, int thread, double q, double along, double place, int crossing, int own, bool onTop)
    {
        int next = along >= 0 ? crossing + 1 : crossing - 1;
        double here = onTop ? 1 : -1;
        double there = (warp ? Over(own, next) : !Over(next, own)) ? 1 : -1;
        // Height falls from this crossing to the next as a cosine; the slope is greatest half-way.
        double t = Math.Clamp(Math.Abs(along), 0, 0.5);
        double slope = (there - here) / 2 * Steepness * Math.Sin(Math.PI * t) * Math.Sign(along);
        double height = here + (there - here) * (0.5 - 0.5 * Math.Cos(Math.PI * t));
        double across = 0.95 * q;
        double nx = warp ? across : -slope;
        double ny = warp ? -slope : across;
        double length = Math.Sqrt(nx * nx + ny * ny + 1 - 0.8 * across * across);
        double nz = Math.Sqrt(Math.Max(0.05, 1 - across * across));
        double facing = Math.Max(0, (nx * _light.X + ny * _light.Y + nz * _light.Z) / length);
        double shade = (Ambient + (1 - Ambient) * facing) * (1 - 0.35 * q * q * q * q) * (0.735 + 0.265 * height);
        if (_swatch.PlyTurns > 0) shade *= 1 + 0.12 * Math.Sin(2 * Math.PI * (place * _swatch.PlyTurns + 0.35 * q + thread * 0.377));
        shade *= (warp ? _endTone : _pickTone)[Wrap(thread, 64)];
        (double r, double g, double b) = warp
            ? _swatch.WarpColours[Wrap(thread, _swatch.WarpColours.Length)]
            : _swatch.WeftColours[Wrap(thread, _swatch.WeftColours.Length)];
        return (r * shade, g * shade, b * shade);
    }
}
