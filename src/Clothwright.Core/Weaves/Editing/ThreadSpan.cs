namespace Clothwright.Core.Weaves.Editing;

/// <summary>Neighbouring threads: ends, picks, or treadles of a tie-up.</summary>
/// <param name="First">0-based first of them.</param>
/// <param name="Count">How many; 1 or more.</param>
public readonly record struct ThreadSpan(int First, int Count)
{
    /// <summary>0-based thread after the last.</summary>
    public int End => First + Count;

    /// <summary>The threads from one to another, whichever comes first.</summary>
    /// <param name="one">0-based thread.</param>
    /// <param name="other">0-based thread.</param>
    public static ThreadSpan Between(int one, int other) => new(Math.Min(one, other), Math.Abs(one - other) + 1);

    /// <summary>Whether a thread is among them.</summary>
    /// <param name="thread">0-based thread.</param>
    public bool Contains(int thread) => thread >= First && thread < End;

    /// <summary>Those of them that a line of threads has; the last thread of the line if it has none of them.</summary>
    /// <param name="threads">Threads of the line, 1 or more.</param>
    public ThreadSpan Within(int threads)
    {
        int first = Math.Clamp(First, 0, threads - 1);
        return new ThreadSpan(first, Math.Clamp(End - first, 1, threads - first));
    }
}
