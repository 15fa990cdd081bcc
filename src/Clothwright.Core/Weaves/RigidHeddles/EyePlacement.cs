using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.RigidHeddles;

/// <summary>Which eyes of a heddle its ends take so that the warp is pulled sideways as little as can be.</summary>
/// <remarks>
/// Ends lie evenly at the sett; eyes lie 2/N apart; a heddle may be slid sideways as a whole. The greatest shift is made as small as possible, exactly:
/// for each candidate of the leftmost deviation the eyes are taken from the right, each as far right as it may go.
/// </remarks>
/// <param name="Eyes">Eye of each end, rising, the first eye in use being 1.</param>
/// <param name="FirstEyeFromFirstEndMetres">Where eye 1 lies, in metres to the right of end 1 of the warp; below 0 is to the left.</param>
/// <param name="GreatestShift">How far the end pulled most lies from its eye.</param>
public sealed record EyePlacement(ImmutableArray<int> Eyes, double FirstEyeFromFirstEndMetres, Length GreatestShift)
{
    private const double SameMetres = 1e-9;

    /// <summary>Finds the eyes.</summary>
    /// <param name="ends">0-based ends of the warp that go through eyes of this heddle, rising; at least one.</param>
    /// <param name="sett">Sett of the warp.</param>
    /// <param name="spaces">Eyes and slots of the heddle per width.</param>
    /// <exception cref="ArgumentException">There is no end.</exception>
    public static EyePlacement Of(IReadOnlyList<int> ends, Sett sett, Sett spaces)
    {
        if (ends.Count == 0) throw new ArgumentException("A heddle without ends has no eyes to choose.", nameof(ends));
        double pitch = 2 / spaces.PerMetre;
        double[] places = [.. ends.Select(e => e / sett.PerMetre)];
        double best = double.MaxValue;
        double bestLeast = 0;
        foreach (double least in Leftovers(places, pitch))
        {
            double range = Range(places, pitch, least, null);
            if (range < best - SameMetres) (best, bestLeast) = (range, least);
        }

        var eyes = new long[places.Length];
        Range(places, pitch, bestLeast, eyes);
        double offset = bestLeast + best / 2 + eyes[0] * pitch;
        return new EyePlacement([.. eyes.Select(e => (int)(e - eyes[0]) + 1)], offset, Length.FromMetres(best / 2));
    }

    // Deviations of ends from the eye at or left of them, each once.
    private static List<double> Leftovers(double[] places, double pitch)
    {
        var all = new List<double>();
        foreach (double place in places)
        {
            double left = place - Math.Floor(place / pitch + SameMetres) * pitch;
            if (!all.Exists(l => Math.Abs(l - left) < SameMetres)) all.Add(left);
        }

        return all;
    }

    // Spread of the deviations when none is below the least.
    private static double Range(double[] places, double pitch, double least, long[]? eyes)
    {
        long next = long.MaxValue;
        double most = least;
        for (int i = places.Length - 1; i >= 0; i--)
        {
            next = Math.Min(next - 1, (long)Math.Floor((places[i] - least) / pitch + SameMetres));
            most = Math.Max(most, places[i] - next * pitch);
            if (eyes is not null) eyes[i] = next;
        }

        return most - least;
    }
}
