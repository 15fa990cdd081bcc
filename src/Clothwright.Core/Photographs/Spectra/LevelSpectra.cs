using Clothwright.Core.Photographs.Pictures;

namespace Clothwright.Core.Photographs.Spectra;

/// <summary>The spectra of one view, and the rays along which threads are looked for.</summary>
internal sealed class LevelSpectra
{
    private const double MostLightOverValley = 0.5;

    private readonly PowerSpectrum _light;
    private readonly PowerSpectrum _across;
    private readonly PowerSpectrum _down;
    private readonly int _side;
    private readonly double _millimetres;

    public LevelSpectra(ClothView view)
    {
        _side = view.Side;
        _millimetres = view.Side * view.MillimetresPerSample;
        _light = PowerSpectrum.OfTwo(ViewChannels.EvenedLight(view), view.Hue, _side).First;
        (_across, _down) = PowerSpectrum.OfTwo(ViewChannels.Valleys(view, down: false), ViewChannels.Valleys(view, down: true), _side);
    }

    /// <summary>Samples for a thread of some spacing.</summary>
    public double SamplesFor(double perMillimetre) => _side / (perMillimetre * _millimetres);

    /// <summary>How far a frequency of the plane stands out in the light, in nepers; cycles in a millimetre to the right and down.</summary>
    public double Light(double right, double down) => _light.At(right * _millimetres, down * _millimetres);

    /// <summary>How far a spacing stands out, both channels together and the valleys alone.</summary>
    public (double Score, double Valley) ScoreAt(double perMillimetre, double angle, bool down) => Score(perMillimetre * _millimetres, angle, down);

    /// <summary>The strongest rays between two spacings.</summary>
    public List<ThreadRay> Rays(bool down, double leastSamples, double mostSamples, double mostAngle)
    {
        var rays = new List<ThreadRay>();
        int first = (int)Math.Ceiling(_side / mostSamples * 2);
        int last = (int)Math.Floor(_side / leastSamples * 2);
        const double AngleStep = Math.PI / 360;
        int angles = (int)(mostAngle / AngleStep);
        for (int f = first; f <= last; f++)
        {
            (double score, double valley, double at) = (double.NegativeInfinity, 0, 0);
            for (int a = -angles; a <= angles; a++)
            {
                (double found, double gap) = Score(f / 2.0, a * AngleStep, down);
                if (found > score) (score, valley, at) = (found, gap, a * AngleStep);
            }

            rays.Add(new ThreadRay(f / 2.0 / _millimetres, at, score, valley));
        }

        // Only places higher than their neighbours on both sides.
        return [.. rays.Where((ray, i) => (i == 0 || ray.Score >= rays[i - 1].Score) && (i == rays.Count - 1 || ray.Score > rays[i + 1].Score))];
    }

    private (double Score, double Valley) Score(double cycles, double angle, bool down)
    {
        (double light, double valley) = (Read(_light, cycles, angle, down), Read(down ? _down : _across, cycles, angle, down));
        // Stripes of two colours fill the light with overtones that the gaps do not have.
        light = Math.Min(light, valley + MostLightOverValley);
        double score = light + valley;
        if (cycles * 2 < _side / 2.0)
        {
            score += 0.3 * Math.Min(light, Read(_light, 2 * cycles, angle, down));
            score += 0.3 * Math.Min(valley, Read(down ? _down : _across, 2 * cycles, angle, down));
        }

        return (score, valley);
    }

    private static double Read(PowerSpectrum spectrum, double cycles, double angle, bool down)
    {
        (double sin, double cos) = Math.SinCos(angle);
        return down ? spectrum.At(-sin * cycles, cos * cycles) : spectrum.At(cos * cycles, sin * cycles);
    }
}
