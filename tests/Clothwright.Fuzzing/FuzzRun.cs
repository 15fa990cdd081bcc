using System.Diagnostics;

namespace Clothwright.Fuzzing;

/// <summary>Tries a reader on many mutated files.</summary>
public static class FuzzRun
{
    private const int MostFinds = 10;

    /// <summary>Runs; the same seed tries the same files.</summary>
    /// <param name="target">The reader.</param>
    /// <param name="count">How many files.</param>
    /// <param name="seed">Seed of the mutations.</param>
    public static FuzzReport Of(FuzzTarget target, int count, int seed)
    {
        ArgumentNullException.ThrowIfNull(target);
        var clock = Stopwatch.StartNew();
        var finds = new List<string>();
        int read = 0;
        double slowest = 0;
        int slowestFile = 0;
        long most = 0;
        for (int i = 0; i < count; i++)
        {
            byte[] file = new Mutation(target, unchecked(seed * 1_000_003 + i)).File();
            long started = Stopwatch.GetTimestamp();
            long before = GC.GetAllocatedBytesForCurrentThread();
            try
            {
                if (target.Try(file)) read++;
            }
            catch (Exception failure)
            {
                if (finds.Count < MostFinds) finds.Add($"{failure.GetType().Name}: {failure.Message} {failure.StackTrace?.Split('\n')[0].Trim()} | {Convert.ToBase64String(file)}");
            }

            double taken = Stopwatch.GetElapsedTime(started).TotalMilliseconds;
            if (taken > slowest) (slowest, slowestFile) = (taken, i);
            most = Math.Max(most, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        using var self = Process.GetCurrentProcess();
        return new FuzzReport(target.Name, seed, count, read, count - read - finds.Count, finds, slowest, slowestFile, most, self.PeakWorkingSet64, clock.Elapsed);
    }
}
