using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;

namespace Clothwright.Core.Cloths.Look.Places;

/// <summary>Where the threads of one direction lie across the cloth.</summary>
/// <remarks>
/// The mean distance of the places is that of the sett; a thicker thread takes a wider share of it, in proportion to its width.
/// A thread that is narrower than its share leaves a gap, half on either side of it. Threads that share a place lie one above the other.
/// </remarks>
public sealed class ThreadPlaces
{
    private readonly double _meanWidth;

    private ThreadPlaces(double[] edges, int[] firstThreads, double pitch, double meanWidth)
    {
        _meanWidth = meanWidth;
        Edges = edges;
        FirstThreads = firstThreads;
        Pitch = pitch;
        Press = Math.Min(1, pitch / meanWidth);
    }

    /// <summary>Places.</summary>
    public int Count => FirstThreads.Length;

    /// <summary>Edges of the places in millimetres, one more than places.</summary>
    public double[] Edges { get; }

    /// <summary>First thread of each place, 0-based.</summary>
    public int[] FirstThreads { get; }

    /// <summary>Mean width of a place in millimetres.</summary>
    public double Pitch { get; }

    /// <summary>Factor on the width of each thread so that none is wider than its place; at most 1.</summary>
    public double Press { get; }

    /// <summary>Lays out threads until a length is full.</summary>
    /// <param name="threads">Looks of the threads, taken round again.</param>
    /// <param name="shared">Whether each thread shares the place before it; taken round again, empty where none does.</param>
    /// <param name="sett">Threads per length, all counted.</param>
    /// <param name="millimetres">The length to fill.</param>
    public static ThreadPlaces Lay(ImmutableArray<ThreadLook> threads, ImmutableArray<bool> shared, Sett sett, double millimetres)
    {
        double alone = shared.IsDefaultOrEmpty ? 1 : (double)Enumerable.Range(0, shared.Length).Count(i => !IsShared(shared, i)) / shared.Length;
        double pitch = 1000 / (sett.PerMetre * alone);
        double meanWidth = MeanWidth(threads, shared);
        var edges = new List<double> { 0 };
        var first = new List<int>();
        double at = 0;
        for (int thread = 0; at < millimetres || first.Count == 0; thread++)
        {
            if (IsShared(shared, thread)) continue;
            first.Add(thread);

            // Rounded as the page has it, so that both lay out the same cloth.
            at += (float)(threads[thread % threads.Length].Width.Millimetres / meanWidth * pitch);
            edges.Add(at);
        }

        return new ThreadPlaces([.. edges], [.. first], pitch, meanWidth);
    }

    /// <summary>Whether a thread shares the place of the one before it. The first of a repeat never does.</summary>
    /// <param name="shared">The pattern of sharing.</param>
    /// <param name="thread">0-based thread.</param>
    public static bool IsShared(ImmutableArray<bool> shared, int thread) => !shared.IsDefaultOrEmpty && thread % shared.Length != 0 && shared[thread % shared.Length];

    /// <summary>Width of a thread as it lies in its place, in millimetres.</summary>
    /// <param name="look">The thread.</param>
    /// <param name="isShared">Whether it lies above or below another; it may then spread over the whole place.</param>
    public double WidthOf(ThreadLook look, bool isShared) => isShared ? Math.Min(look.Width.Millimetres, Pitch) : look.Width.Millimetres * Press;

    /// <summary>Width of the place in which a thread lies, in millimetres.</summary>
    /// <param name="look">The thread.</param>
    /// <param name="isShared">Whether it lies above or below another.</param>
    public double ShareOf(ThreadLook look, bool isShared) => isShared ? Pitch : look.Width.Millimetres / _meanWidth * Pitch;

    /// <summary>The place at a distance from the edge; the nearest one outside the cloth.</summary>
    /// <param name="millimetres">Distance from the first edge.</param>
    public int At(double millimetres)
    {
        int found = Array.BinarySearch(Edges, millimetres);
        return Math.Clamp(found >= 0 ? found : ~found - 1, 0, Count - 1);
    }

    // Mean over the threads that have a place of their own, over one round of looks and sharing together.
    private static double MeanWidth(ImmutableArray<ThreadLook> threads, ImmutableArray<bool> shared)
    {
        int round = shared.IsDefaultOrEmpty ? threads.Length : (int)CommonRepeat.Of(threads.Length, shared.Length);
        double sum = 0;
        int count = 0;
        for (int thread = 0; thread < round; thread++)
        {
            if (IsShared(shared, thread)) continue;
            sum += threads[thread % threads.Length].Width.Millimetres;
            count++;
        }

        return sum / count;
    }
}
