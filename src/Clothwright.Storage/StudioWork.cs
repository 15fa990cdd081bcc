using System.Data;
using Microsoft.EntityFrameworkCore;

namespace Clothwright.Storage;

/// <summary>Runs work on the tables: each piece of writing is one transaction, done or not done.</summary>
/// <param name="contexts">Opens the tables.</param>
/// <param name="clock">The time of saves.</param>
internal sealed class StudioWork(IDbContextFactory<StudioContext> contexts, TimeProvider clock)
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
        await using StudioContext studio = await contexts.CreateDbContextAsync(cancel);
        studio.ChangeTracker.QueryTrackingBehavior = QueryTrackingBehavior.NoTracking;
        return await work(studio);
    }

    /// <summary>Reads and writes. What this returns is on the disk.</summary>
    public async Task<T> WriteAsync<T>(Func<StudioContext, Task<T>> work, CancellationToken cancel)
    {
        await using StudioContext studio = await contexts.CreateDbContextAsync(cancel);
        await using var transaction = await studio.Database.BeginTransactionAsync(IsolationLevel.Serializable, cancel);
        T outcome = await work(studio);
        await studio.SaveChangesAsync(cancel);
        // From here on the save is not to be called off half way.
        await transaction.CommitAsync(CancellationToken.None);
        return outcome;
    }
}
