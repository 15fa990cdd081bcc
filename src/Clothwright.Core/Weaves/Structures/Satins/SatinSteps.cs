using System.Collections.Immutable;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>The steps with which a regular satin can be made on a number of ends.</summary>
/// <remarks>
/// A step s makes a satin on n ends if it shares no divisor with n and is neither 1 nor n − 1 (those are twills).
/// Steps s and n − s are mirror images. Table of steps: Wolfensberger, Theory of Silk Weaving.
/// </remarks>
public static class SatinSteps
{
    /// <summary>All steps, rising.</summary>
    /// <param name="ends">Ends in the repeat, 1 to 64.</param>
    public static ImmutableArray<int> On(int ends) =>
        [.. Enumerable.Range(0, ends).Where(s => s > 1 && s < ends - 1 && Divisors.Greatest(s, ends) == 1)];

    /// <summary>One step of each mirrored pair: those below half.</summary>
    /// <param name="ends">Ends in the repeat, 1 to 64.</param>
    public static ImmutableArray<int> UpToMirror(int ends) => [.. On(ends).Where(s => 2 * s < ends)];

    /// <summary>Whether the satin looks alike along every thread, both ways (s² leaves 1 or −1).</summary>
    /// <param name="ends">Ends in the repeat.</param>
    /// <param name="step">A step of <see cref="On"/>.</param>
    public static bool IsIsonemal(int ends, int step) => step * step % ends is int square && (square == 1 || square == ends - 1);

    /// <summary>The step of the same satin after a quarter turn: the inverse of the step.</summary>
    /// <param name="ends">Ends in the repeat.</param>
    /// <param name="step">A step of <see cref="On"/>.</param>
    public static int QuarterTurn(int ends, int step) => Enumerable.Range(1, ends - 1).First(i => i * step % ends == 1);

    /// <summary>One step of each class under mirror and quarter turn, the smallest.</summary>
    /// <param name="ends">Ends in the repeat, 1 to 64.</param>
    public static ImmutableArray<int> UpToMirrorAndTurn(int ends) =>
        [.. UpToMirror(ends).Where(s => QuarterTurn(ends, s) is int t && Math.Min(t, ends - t) >= s)];

    /// <summary>The step that keeps the binding points furthest apart; null where there is no satin.</summary>
    /// <param name="ends">Ends in the repeat, 1 to 64.</param>
    public static int? Best(int ends) => UpToMirror(ends)
        .OrderByDescending(s => NearestSquared(ends, s))
        .Select(s => (int?)s)
        .FirstOrDefault();

    // Squared distance, in threads, from a binding point to its nearest fellow.
    private static int NearestSquared(int ends, int step) => Enumerable.Range(1, ends).Min(p =>
    {
        int e = p * step % ends;
        int across = Math.Min(e, ends - e);
        return across * across + p * p;
    });
}
