using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;

namespace Clothwright.Drawing.Faces;

/// <summary>Where the threads of one direction lie across a length of cloth.</summary>
/// <remarks>
/// The mean distance of the threads is that of the sett; a thicker thread takes a wider share of it, in proportion to its width.
/// A thread that is narrower than its share leaves a gap, half on either side of it.
/// </remarks>
internal sealed class ThreadAxis
{
    private ThreadAxis(double[] edges, double[] widths)
    {
        Edges = edges;
        Widths = widths;
    }

    /// <summary>Threads that lie wholly or partly in the length.</summary>
    public int Count => Widths.Length;

    /// <summary>Edge of each thread's share in metres, one more than threads.</summary>
    public double[] Edges { get; }

    /// <summary>What each thread covers of its share, in metres.</summary>
    public double[] Widths { get; }

    /// <summary>Lays out the threads from the first one on.</summary>
    /// <param name="threads">Looks of the threads, taken round again.</param>
    /// <param name="sett">Threads per length.</param>
    /// <param name="length">The length to fill.</param>
    public static ThreadAxis Lay(IReadOnlyList<ThreadLook> threads, Sett sett, Length length)
    {
        double meanWidth = threads.Average(t => t.Width.Metres);
        var edges = new List<double> { 0 };
        var widths = new List<double>();
        double at = 0;
        while (at < length.Metres)
        {
            double width = threads[widths.Count % threads.Count].Width.Metres;
            double share = width / meanWidth / sett.PerMetre;
            at += share;
            edges.Add(at);
            widths.Add(Math.Min(width, share));
        }

        return new ThreadAxis([.. edges], [.. widths]);
    }

    /// <summary>Where the thread itself begins.</summary>
    /// <param name="thread">0-based thread.</param>
    public double Start(int thread) => (Edges[thread] + Edges[thread + 1] - Widths[thread]) / 2;

    /// <summary>Where the thread itself ends.</summary>
    /// <param name="thread">0-based thread.</param>
    public double End(int thread) => (Edges[thread] + Edges[thread + 1] + Widths[thread]) / 2;
}
