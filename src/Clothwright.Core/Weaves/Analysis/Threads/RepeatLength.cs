namespace Clothwright.Core.Weaves.Analysis.Threads;

/// <summary>Finds the shortest repeat in a row of threads.</summary>
public static class RepeatLength
{
    /// <summary>The shortest length that, taken a whole number of times, gives the row.</summary>
    /// <param name="threads">What each thread is: a class, a shaft set, a yarn.</param>
    public static int Whole(ReadOnlySpan<int> threads)
    {
        int running = Running(threads);
        return running > 0 && threads.Length % running == 0 ? running : threads.Length;
    }

    /// <summary>The shortest length after which the row goes on as it began, though it may stop within a repeat, as with balancing ends.</summary>
    /// <remarks>The length less its longest border: a start that is also an end (Knuth, Morris and Pratt, from memory).</remarks>
    /// <param name="threads">What each thread is: a class, a shaft set, a yarn.</param>
    public static int Running(ReadOnlySpan<int> threads)
    {
        if (threads.IsEmpty) return 0;
        var border = new int[threads.Length];
        for (int i = 1, k = 0; i < threads.Length; i++)
        {
            while (k > 0 && threads[i] != threads[k]) k = border[k - 1];
            if (threads[i] == threads[k]) k++;
            border[i] = k;
        }

        return threads.Length - border[^1];
    }
}
