namespace Clothwright.Benchmarks.Weaves;

/// <summary>Time on the processor, so that what else the machine does is left out; the collector's share is in it.</summary>
internal static class ProcessorTime
{
    public const int Runs = 40;

    /// <summary>Milliseconds of one call, the mean of several.</summary>
    public static double Mean<T>(Func<T> question, int runs = Runs)
    {
        // Called often enough beforehand to be compiled with all optimisations.
        for (int i = 0; i < runs; i++) question();
        Thread.Sleep(300);
        for (int i = 0; i < runs; i++) question();
        TimeSpan start = Environment.CpuUsage.TotalTime;
        for (int i = 0; i < runs; i++) question();
        return (Environment.CpuUsage.TotalTime - start).TotalMilliseconds / runs;
    }
}
