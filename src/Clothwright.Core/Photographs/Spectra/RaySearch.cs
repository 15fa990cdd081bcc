using Clothwright.Core.Photographs.Pictures;

namespace Clothwright.Core.Photographs.Spectra;

/// <summary>Looks for threads of every spacing a square of cloth can show, each in a view in which a thread is 5 to 10 samples wide.</summary>
internal sealed class RaySearch
{
    /// <summary>Greatest turn of the threads from the picture's axes.</summary>
    public const double MostAngle = 15 * Math.PI / 180;

    private const double LeastSamples = 5;
    private const double MostSamples = 10;
    // Threads narrower than this in the photograph itself are no longer seen apart.
    private const double LeastPixels = 2.6;
    // A view that shows fewer threads than this gives no count.
    private const double LeastThreads = 12;

    private readonly List<LevelSpectra> _levels = [];

    /// <summary>Looks.</summary>
    /// <param name="photograph">The photograph.</param>
    /// <param name="mapping">Where the cloth lies in it.</param>
    /// <param name="middle">Middle of the square.</param>
    /// <param name="sideMillimetres">Side of the square.</param>
    /// <param name="samples">Samples along a view's side: a power of two.</param>
    public RaySearch(Photograph photograph, PlaneMapping mapping, ClothPoint middle, double sideMillimetres, int samples)
    {
        double pixel = 1 / mapping.PixelsPerMillimetreAt(mapping.ToPhoto(middle));
        while (samples > 128 && samples * pixel > 1.5 * sideMillimetres) samples /= 2;
        double widest = sideMillimetres / samples;
        var across = new List<ThreadRay>();
        var down = new List<ThreadRay>();
        for (double step = Math.Min(pixel, widest); ; step = Math.Min(2 * step, widest))
        {
            // The last doubling is swallowed when it would be less than a quarter.
            if (step < widest && step * 1.25 > widest) step = widest;
            bool first = step <= pixel * 1.0001;
            bool last = step >= widest;
            var spectra = new LevelSpectra(new ClothView(photograph, mapping, middle, step, samples));
            _levels.Add(spectra);
            double least = first ? LeastPixels : LeastSamples;
            double most = last ? samples / LeastThreads : MostSamples;
            across.AddRange(spectra.Rays(down: false, least, most, MostAngle));
            down.AddRange(spectra.Rays(down: true, least, most, MostAngle));
            if (last) break;
        }

        Across = Strongest(across);
        Down = Strongest(down);
        MostPerMillimetre = 1 / (LeastPixels * pixel);
        LeastPerMillimetre = LeastThreads / sideMillimetres;
    }

    /// <summary>The strongest rays of threads counted to the right, strongest first.</summary>
    public List<ThreadRay> Across { get; }

    /// <summary>The strongest rays of threads counted downwards, strongest first.</summary>
    public List<ThreadRay> Down { get; }

    /// <summary>The closest threads the photograph can show.</summary>
    public double MostPerMillimetre { get; }

    /// <summary>The widest threads of which the square shows enough.</summary>
    public double LeastPerMillimetre { get; }

    /// <summary>The ray at another spacing, scored in the view that shows it best.</summary>
    public ThreadRay At(double perMillimetre, double angle, bool down)
    {
        (double score, double valley) = LevelFor(perMillimetre).ScoreAt(perMillimetre, angle, down);
        return new ThreadRay(perMillimetre, angle, score, valley);
    }

    /// <summary>The view in which a spacing is 5 to 10 samples, or the one nearest to that.</summary>
    public LevelSpectra LevelFor(double perMillimetre) =>
        _levels.MinBy(l => Math.Abs(Math.Log(l.SamplesFor(perMillimetre) / 7)))!;

    private static List<ThreadRay> Strongest(List<ThreadRay> rays)
    {
        var kept = new List<ThreadRay>();
        foreach (ThreadRay ray in rays.OrderByDescending(r => r.Score))
        {
            if (kept.TrueForAll(k => Math.Abs(Math.Log(k.PerMillimetre / ray.PerMillimetre)) > 0.05)) kept.Add(ray);
            if (kept.Count == 8) break;
        }

        return kept;
    }
}
