namespace Clothwright.Core.Cloths.Look.Places;

/// <summary>The places that one column, or one row, of pixels covers.</summary>
/// <param name="Threads">All places.</param>
/// <param name="From">Where it begins, in places from the edge of the face; may run downwards on a cloth turned over.</param>
/// <param name="To">Where it ends, in places; at least <paramref name="From"/>.</param>
/// <param name="Middle">Its middle in millimetres from the edge of the face.</param>
/// <param name="Covered">Share of the pixel that lies on the cloth.</param>
/// <param name="IsTurned">Whether the cloth is turned over.</param>
public readonly record struct PlaceSpan(ThreadPlaces Threads, float From, float To, float Middle, float Covered, bool IsTurned)
{
    /// <summary>The most places looked at; where a pixel covers more, they are picked evenly.</summary>
    public const int Most = 9;

    /// <summary>Places to look at.</summary>
    public int Count => Covered <= 0 ? 0 : Math.Min(Most, Whole);

    private int Whole => (int)MathF.Ceiling(To) - (int)MathF.Floor(From);

    /// <summary>One of the places to look at and how much it counts.</summary>
    /// <param name="index">0-based.</param>
    public (int Place, float Share) Place(int index)
    {
        int first = (int)MathF.Floor(From);
        int whole = Whole;
        int place = whole <= Most ? first + index : first + index * whole / Most;
        float share = MathF.Min(To, place + 1) - MathF.Max(From, place);
        if (place >= Threads.Count) return (Threads.Count - 1, 0);
        return (place, share * (float)(Threads.Edges[place + 1] - Threads.Edges[place]));
    }

    /// <summary>The spans of a line of pixels.</summary>
    /// <param name="places">Places along it.</param>
    /// <param name="start">Millimetres at the first pixel's outer edge, as seen.</param>
    /// <param name="perPixel">Millimetres in a pixel.</param>
    /// <param name="count">Pixels.</param>
    /// <param name="extent">Size of the cloth in millimetres.</param>
    /// <param name="turned">Whether the cloth is turned over.</param>
    public static PlaceSpan[] Along(ThreadPlaces places, double start, double perPixel, int count, double extent, bool turned)
    {
        ArgumentNullException.ThrowIfNull(places);
        var spans = new PlaceSpan[count];
        for (int i = 0; i < count; i++)
        {
            double low = Math.Clamp(start + i * perPixel, 0, extent);
            double high = Math.Clamp(start + (i + 1) * perPixel, 0, extent);
            float covered = (float)((high - low) / perPixel);
            if (turned) (low, high) = (extent - high, extent - low);
            spans[i] = new PlaceSpan(places, (float)Coordinate(places, low), (float)Coordinate(places, high), (float)((low + high) / 2), covered, turned);
        }

        return spans;
    }

    private static double Coordinate(ThreadPlaces places, double millimetres)
    {
        int place = places.At(millimetres);
        double width = places.Edges[place + 1] - places.Edges[place];
        return place + Math.Clamp((millimetres - places.Edges[place]) / width, 0, 1);
    }
}
