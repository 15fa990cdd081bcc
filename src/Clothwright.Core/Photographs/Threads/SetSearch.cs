using Clothwright.Core.Photographs.Spectra;

namespace Clothwright.Core.Photographs.Threads;

/// <summary>Finds the two sets of threads among the spacings that stand out.</summary>
internal static class SetSearch
{
    // Ends and picks of a flat cloth cross nearly square, even where it was pulled a little.
    private const double MostSkew = 6 * Math.PI / 180;
    private const int StripsToTry = 3;
    private const int ThreadsDeep = 8;

    // What the weave says against what rays and strips say; set on synthetic cloth of one and two colours.
    private const double WeightOfWeave = 3;

    // Spacings nearer than this are the same answer.
    private static readonly double SameSpacing = Math.Log(1.12);

    /// <summary>The two sets.</summary>
    /// <returns>What was found to the right and downwards; null where nothing stands out.</returns>
    public static (FoundSet Across, FoundSet Down)? Find(RaySearch search, StripReader reader)
    {
        if (search.Across.Count == 0 || search.Down.Count == 0) return null;
        (ThreadRay across, ThreadRay down) = BestPair(search.Across, search.Down);
        List<ThreadCandidate> right = Candidates(search, reader, search.Across, down, false);
        List<ThreadCandidate> below = Candidates(search, reader, search.Down, across, true);
        var pairs = new List<(ThreadCandidate Right, ThreadCandidate Below, double Weight)>();
        foreach (ThreadCandidate r in right)
        {
            foreach (ThreadCandidate b in below)
            {
                if (Math.Abs(r.Ray.AngleRadians - b.Ray.AngleRadians) > MostSkew) continue;
                pairs.Add((r, b, r.Weight + b.Weight + WeightOfWeave * WeaveLattice.Standing(search, r.Ray, b.Ray)));
            }
        }

        if (pairs.Count == 0) return null;
        (ThreadCandidate Right, ThreadCandidate Below, double Weight) best = pairs.MaxBy(p => p.Weight);
        return (
            FoundSet.Of(best.Right, right, best.Weight, Rival(pairs.Select(p => (p.Right, p.Weight)), best.Right)),
            FoundSet.Of(best.Below, below, best.Weight, Rival(pairs.Select(p => (p.Below, p.Weight)), best.Below)));
    }

    private static (ThreadCandidate Candidate, double Weight)? Rival(IEnumerable<(ThreadCandidate Candidate, double Weight)> pairs, ThreadCandidate best)
    {
        (ThreadCandidate, double)? rival = null;
        double most = double.NegativeInfinity;
        foreach ((ThreadCandidate candidate, double weight) in pairs)
        {
            if (weight <= most || Math.Abs(Math.Log(candidate.Ray.PerMillimetre / best.Ray.PerMillimetre)) < SameSpacing) continue;
            (rival, most) = ((candidate, weight), weight);
        }

        return rival;
    }

    private static (ThreadRay Across, ThreadRay Down) BestPair(List<ThreadRay> across, List<ThreadRay> down)
    {
        (ThreadRay, ThreadRay) best = (across[0], down[0]);
        double most = double.NegativeInfinity;
        foreach (ThreadRay a in across)
        {
            foreach (ThreadRay d in down)
            {
                if (Math.Abs(a.AngleRadians - d.AngleRadians) > MostSkew || a.Score + d.Score <= most) continue;
                (best, most) = ((a, d), a.Score + d.Score);
            }
        }

        return best;
    }

    private static List<ThreadCandidate> Candidates(RaySearch search, StripReader reader, List<ThreadRay> rays, ThreadRay other, bool down)
    {
        List<ThreadRay> tried = [.. rays.Where(r => Math.Abs(r.AngleRadians - other.AngleRadians) <= MostSkew).Take(4)];
        foreach (ThreadRay ray in tried.Take(2).ToArray())
        {
            foreach (double factor in (ReadOnlySpan<double>)[0.5, 2])
            {
                double perMillimetre = ray.PerMillimetre * factor;
                if (perMillimetre > search.MostPerMillimetre || perMillimetre < search.LeastPerMillimetre) continue;
                if (tried.TrueForAll(t => Math.Abs(Math.Log(t.PerMillimetre / perMillimetre)) > 0.05)) tried.Add(search.At(perMillimetre, ray.AngleRadians, down));
            }
        }

        double depth = ThreadsDeep / other.PerMillimetre;
        return [.. tried.Select(r => new ThreadCandidate(r, reader.Read(r.PerMillimetre, r.AngleRadians, down, depth, StripsToTry)))];
    }
}
