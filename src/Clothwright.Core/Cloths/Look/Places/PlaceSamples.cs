namespace Clothwright.Core.Cloths.Look.Places;

/// <summary>Points along one direction of a picture.</summary>
public static class PlaceSamples
{
    /// <summary>The points.</summary>
    /// <param name="places">Places along this direction.</param>
    /// <param name="start">Millimetres at the first pixel's outer edge, as seen.</param>
    /// <param name="perPoint">Millimetres from point to point.</param>
    /// <param name="count">Points.</param>
    /// <param name="extent">Size of the cloth in millimetres; nothing lies beyond it.</param>
    /// <param name="turned">Whether the cloth is turned over, so that its last place comes first.</param>
    public static PlaceSample[] Along(ThreadPlaces places, double start, double perPoint, int count, double extent, bool turned)
    {
        ArgumentNullException.ThrowIfNull(places);
        var samples = new PlaceSample[count];
        for (int i = 0; i < count; i++)
        {
            double seen = start + (i + 0.5) * perPoint;
            double cloth = turned ? extent - seen : seen;
            if (seen < 0 || seen >= extent)
            {
                samples[i] = new PlaceSample(-1, -1, 0, 0, 0, 0, (float)seen, (float)cloth);
                continue;
            }

            int place = places.At(cloth);
            double width = places.Edges[place + 1] - places.Edges[place];
            double middle = (places.Edges[place] + places.Edges[place + 1]) / 2;
            double offset = cloth - middle;
            int side = offset < 0 ? -1 : 1;
            double t = Math.Min(0.5, Math.Abs(offset) / width);
            int seenSide = turned ? -side : side;
            samples[i] = new PlaceSample(
                place,
                place + side,
                places.FirstThreads[place],
                (float)(turned ? -offset : offset),
                (float)((1 - Math.Cos(Math.PI * t)) / 2),
                (float)(Math.Sin(Math.PI * t) * seenSide),
                (float)seen,
                (float)cloth);
        }

        return samples;
    }
}
