using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Clothwright.Storage;

/// <summary>Runs work on the tables: each piece of writing is one transaction, done or not done.</summary>
/// <param name="tables">Opens the tables.</param>
/// <param name="clock">The time of saves.</param>
internal sealed class StudioWork(IStudioTables tables, TimeProvider clock)
{
    /// <summary>The time, to the microsecond that the tables hold.</summary>
    public DateTimeOffset Now()
    {
        DateTimeOffset now = clock.GetUtcNow();
        return now.AddTicks(-(now.Ticks % TimeSpan.TicksPerMicrosecond));
    }

    /// <summary>Reads.</summary>
    public async Task<T> ReadAsync<T>(Func<StudioContext, Task<T>> work, CancellationToken cancel)
    {
        await using StudioContext studio = await tables.CreateDbContextAsync(cancel);
        await using IDbContextTransaction reading = await tables.BeginReadingAsync(studio, cancel);
        studio.ChangeTracker.QueryTrackingBehavior = QueryTrackingBehavior.NoTracking;
        return await work(studio);
    }

    /// <summary>Reads and writes. What this returns is on the disk.</summary>
    public async Task<T> WriteAsync<T>(Func<StudioContext, Task<T>> work, CancellationToken cancel)
    {
        await using StudioContext studio = await tables.CreateDbContextAsync(cancel);
        await using IDbContextTransaction transaction = await tables.BeginWritingAsync(studio, cancel);
        T outcome = await work(studio);
        await studio.SaveChangesAsync(cancel);
        // From here on the save is not to be called off half way.
        await transaction.CommitAsync(CancellationToken.None);
        return outcome;
    }
}
