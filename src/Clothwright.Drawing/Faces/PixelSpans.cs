namespace Clothwright.Drawing.Faces;

/// <summary>For each pixel of a line, the threads and gaps that it covers and how much of the pixel each takes.</summary>
internal sealed class PixelSpans
{
    /// <summary>Number that stands for a gap.</summary>
    public const int Gap = -1;

    private readonly Span[][] _spans;

    private PixelSpans(Span[][] spans) => _spans = spans;

    /// <summary>Pixels.</summary>
    public int Count => _spans.Length;

    /// <summary>What a pixel covers; the shares add to 1.</summary>
    /// <param name="pixel">0-based pixel.</param>
    public ReadOnlySpan<Span> this[int pixel] => _spans[pixel];

    /// <summary>Divides a line of threads among pixels.</summary>
    /// <param name="axis">The threads.</param>
    /// <param name="length">The length in metres.</param>
    /// <param name="pixels">Pixels along it, at least 1.</param>
    /// <param name="reversed">Whether the last pixel shows the first thread.</param>
    public static PixelSpans Divide(ThreadAxis axis, double length, int pixels, bool reversed)
    {
        double pixel = length / pixels;
        var spans = new List<Span>[pixels];
        for (int i = 0; i < pixels; i++) spans[i] = [];
        for (int thread = 0; thread < axis.Count; thread++)
        {
            Add(spans, Gap, axis.Edges[thread], axis.Start(thread), axis, pixel);
            Add(spans, thread, axis.Start(thread), axis.End(thread), axis, pixel);
            Add(spans, Gap, axis.End(thread), axis.Edges[thread + 1], axis, pixel);
        }

        if (reversed) Array.Reverse(spans);
        return new PixelSpans([.. spans.Select(s => s.ToArray())]);
    }

    private static void Add(List<Span>[] spans, int thread, double from, double to, ThreadAxis axis, double pixel)
    {
        double least = pixel * 1e-9;
        for (int i = (int)(from / pixel); i < spans.Length && i * pixel < to - least; i++)
        {
            double start = Math.Max(from, i * pixel);
            double end = Math.Min(to, (i + 1) * pixel);
            if (end - start <= least) continue;
            double across = thread == Gap ? 0.5 : ((start + end) / 2 - axis.Start(thread)) / axis.Widths[thread];
            spans[i].Add(new Span(thread, (end - start) / pixel, across));
        }
    }

    /// <summary>A part of a pixel.</summary>
    /// <param name="Thread">0-based thread, or <see cref="Gap"/>.</param>
    /// <param name="Share">How much of the pixel, 0 to 1.</param>
    /// <param name="Across">Where its middle lies across the thread, 0 to 1.</param>
    internal readonly record struct Span(int Thread, double Share, double Across);
}
